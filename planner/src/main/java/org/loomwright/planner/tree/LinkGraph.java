package org.loomwright.planner.tree;

import java.util.BitSet;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Numbered links between numbered nodes. Links keep the order of the input; wherever costs tie, the
 * lower number wins.
 */
final class LinkGraph {
  private final int[] from;
  private final int[] to;
  private final double[] cost;
  private final int[][] at;
  private final int[] byCost;

  /**
   * A graph of nodes 0 to {@code nodes} - 1.
   *
   * @param from one end of each link
   * @param to the other end of each link
   * @param cost cost of each link
   */
  LinkGraph(int nodes, int[] from, int[] to, double[] cost) {
    this.from = from.clone();
    this.to = to.clone();
    this.cost = cost.clone();
    int[] count = new int[nodes];
    for (int link = 0; link < from.length; link++) {
      if (from[link] != to[link]) {
        count[from[link]]++;
        count[to[link]]++;
      }
    }
    at = new int[nodes][];
    for (int node = 0; node < nodes; node++) {
      at[node] = new int[count[node]];
    }
    int[] next = new int[nodes];
    for (int link = 0; link < from.length; link++) {
      if (from[link] != to[link]) {
        at[from[link]][next[from[link]]++] = link;
        at[to[link]][next[to[link]]++] = link;
      }
    }
    byCost =
        IntStream.range(0, from.length)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer link) -> cost[link]))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  int nodes() {
    return at.length;
  }

  int links() {
    return from.length;
  }

  int from(int link) {
    return from[link];
  }

  int to(int link) {
    return to[link];
  }

  double cost(int link) {
    return cost[link];
  }

  int other(int link, int node) {
    return from[link] == node ? to[link] : from[link];
  }

  /** Links that touch a node, in order; links from a node to itself are left out. */
  int[] at(int node) {
    return at[node];
  }

  /** Cost of some links, summed in order. */
  double cost(BitSet links) {
    return links.stream().mapToDouble(link -> cost[link]).sum();
  }

  /** All links. */
  BitSet all() {
    BitSet all = new BitSet(links());
    all.set(0, links());
    return all;
  }

  /** Nodes that some links touch. */
  BitSet touched(BitSet links) {
    BitSet nodes = new BitSet(nodes());
    links.stream()
        .forEach(
            link -> {
              nodes.set(from[link]);
              nodes.set(to[link]);
            });
    return nodes;
  }

  /** How many of some links touch each node. */
  int[] degrees(BitSet links) {
    int[] degrees = new int[nodes()];
    links.stream()
        .forEach(
            link -> {
              degrees[from[link]]++;
              degrees[to[link]]++;
            });
    return degrees;
  }

  /**
   * The least spanning forest of some links (J. B. Kruskal, "On the shortest spanning subtree of a
   * graph and the traveling salesman problem", Proc. Amer. Math. Soc. 7, 1956).
   */
  BitSet spanning(BitSet links) {
    Sets sets = new Sets(nodes());
    BitSet forest = new BitSet(links());
    for (int link : byCost) {
      if (links.get(link) && sets.join(from[link], to[link])) {
        forest.set(link);
      }
    }
    return forest;
  }

  /** A forest without the branches that end at none of the nodes to keep. */
  BitSet pruned(BitSet forest, BitSet keep) {
    BitSet left = (BitSet) forest.clone();
    int[] degrees = degrees(left);
    int[] bare = new int[nodes()];
    int waiting = 0;
    for (int node = 0; node < nodes(); node++) {
      if (degrees[node] == 1 && !keep.get(node)) {
        bare[waiting++] = node;
      }
    }
    while (waiting > 0) {
      int node = bare[--waiting];
      for (int link : at[node]) {
        if (left.get(link)) {
          left.clear(link);
          int other = other(link, node);
          degrees[node]--;
          degrees[other]--;
          if (degrees[other] == 1 && !keep.get(other)) {
            bare[waiting++] = other;
          }
        }
      }
    }
    return left;
  }

  /** The least spanning forest of some links, without needless branches. */
  BitSet tidied(BitSet links, BitSet keep) {
    return pruned(spanning(links), keep);
  }

  /** Nodes reached from a node over some links, itself included. */
  BitSet reached(int start, BitSet links) {
    BitSet reached = new BitSet(nodes());
    int[] waiting = new int[nodes()];
    int count = 0;
    reached.set(start);
    waiting[count++] = start;
    while (count > 0) {
      int node = waiting[--count];
      for (int link : at[node]) {
        int other = other(link, node);
        if (links.get(link) && !reached.get(other)) {
          reached.set(other);
          waiting[count++] = other;
        }
      }
    }
    return reached;
  }
}
