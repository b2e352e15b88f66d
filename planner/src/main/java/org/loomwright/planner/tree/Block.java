package org.loomwright.planner.tree;

import java.util.BitSet;
import java.util.List;

/**
 * A part of a graph that no single node cuts in two, and what must be joined within it.
 *
 * @param graph the part, numbered anew in the same order
 * @param links number of each of its links in the whole graph
 * @param ends its nodes to be joined, ascending, two at least
 */
record Block(LinkGraph graph, List<Integer> links, List<Integer> ends) {
  Block {
    links = List.copyOf(links);
    ends = List.copyOf(ends);
  }

  /** Adds some links of the part to links of the whole. */
  void addTo(BitSet whole, BitSet part) {
    part.stream().forEach(link -> whole.set(links.get(link)));
  }
}
