package org.loomwright.model.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A solved state of the network of cases that stand together electrically.
 *
 * @param cases case ids, one per component
 * @param state which loads are on, and the supply, in words
 * @param nodesV voltage of each node against the battery's negative post, V
 * @param branches what flows through each element
 */
public record NetworkState(
    List<String> cases, String state, Map<String, Double> nodesV, List<NetworkBranch> branches) {
  public NetworkState {
    cases = List.copyOf(cases);
    nodesV = Collections.unmodifiableMap(new LinkedHashMap<>(nodesV));
    branches = List.copyOf(branches);
  }
}
