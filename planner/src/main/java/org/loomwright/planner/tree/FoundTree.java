package org.loomwright.planner.tree;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * A tree that joins nodes, and how good it is proven to be.
 *
 * @param links ids of its links in the order of the input
 * @param cost sum of the costs of its links
 * @param leastCost what any tree that joins these nodes costs at least; equals {@code cost} when
 *     exact
 * @param exact whether no tree that joins these nodes can cost less
 * @param bound the same in words
 */
public record FoundTree(
    Set<String> links, double cost, double leastCost, boolean exact, String bound) {
  public FoundTree {
    links = Collections.unmodifiableSet(new LinkedHashSet<>(links));
  }
}
