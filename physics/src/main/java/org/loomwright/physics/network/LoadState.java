package org.loomwright.physics.network;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which switched loads are on, and how high the sources stand.
 *
 * @param on names of the switched loads that are on, in the network's order
 * @param emfV electromotive force of each source that has a range, V
 */
public record LoadState(Set<String> on, Map<String, Double> emfV) {
  /** Copies, keeping the order. */
  public LoadState {
    on = Collections.unmodifiableSet(new LinkedHashSet<>(on));
    emfV = Collections.unmodifiableMap(new LinkedHashMap<>(emfV));
  }
}
