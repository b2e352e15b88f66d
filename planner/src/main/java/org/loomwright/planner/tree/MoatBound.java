package org.loomwright.planner.tree;

import java.util.BitSet;
import java.util.List;

/**
 * A lower bound on the cost of every forest that joins pairs of nodes (M. X. Goemans and D. P.
 * Williamson, "A general approximation technique for constrained forest problems", SIAM J. on
 * Computing 24, 1995). A moat grows round every set of nodes that parts a pair, all at the same
 * pace, until two meet in a link and become one. Every forest crosses each such moat, and the moats
 * a link crosses are never wider than its cost, so their total width is the bound; it is at least
 * half the least cost.
 */
final class MoatBound {
  private final LinkGraph graph;
  private final List<Pair> pairs;
  private final Sets sets;
  private final double[] width;

  private MoatBound(LinkGraph graph, List<Pair> pairs) {
    this.graph = graph;
    this.pairs = pairs;
    sets = new Sets(graph.nodes());
    width = new double[graph.nodes()];
  }

  /**
   * The bound.
   *
   * @param pairs each connected in the graph
   */
  static double of(LinkGraph graph, List<Pair> pairs) {
    return new MoatBound(graph, pairs).total();
  }

  private double total() {
    double total = 0;
    BitSet growing = growing();
    while (!growing.isEmpty()) {
      double grow = Double.POSITIVE_INFINITY;
      int meets = -1;
      for (int link = 0; link < graph.links(); link++) {
        int from = graph.from(link);
        int to = graph.to(link);
        int sides = (grows(growing, from) ? 1 : 0) + (grows(growing, to) ? 1 : 0);
        if (sides > 0 && sets.find(from) != sets.find(to)) {
          double until = Math.max(0, graph.cost(link) - width[from] - width[to]) / sides;
          if (until < grow) {
            grow = until;
            meets = link;
          }
        }
      }
      total += grow * growing.cardinality();
      for (int node = 0; node < graph.nodes(); node++) {
        if (grows(growing, node)) {
          width[node] += grow;
        }
      }
      sets.join(graph.from(meets), graph.to(meets));
      growing = growing();
    }
    return total;
  }

  private boolean grows(BitSet growing, int node) {
    return growing.get(sets.find(node));
  }

  /** Heads of the sets that part a pair. */
  private BitSet growing() {
    BitSet growing = new BitSet();
    for (Pair pair : pairs) {
      int from = sets.find(pair.from());
      int to = sets.find(pair.to());
      if (from != to) {
        growing.set(from);
        growing.set(to);
      }
    }
    return growing;
  }
}
