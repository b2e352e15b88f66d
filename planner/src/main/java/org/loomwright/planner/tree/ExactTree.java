package org.loomwright.planner.tree;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * The cheapest tree by dynamic programming over subsets of the nodes to join (S. E. Dreyfus and R.
 * A. Wagner, "The Steiner problem in graphs", Networks 1, 1971, in the form of R. E. Erickson, C.
 * L. Monma and A. F. Veinott, "Send-and-split method for minimum-concave-cost network flows", Math.
 * of Operations Research 12, 1987). For every subset S and node v it finds the cheapest tree over S
 * and v: either two trees over a split of S meet at v, or a path leads from v to where such a tree
 * ends.
 */
final class ExactTree {
  private final LinkGraph graph;
  private final double[][] cost;
  private final int[][] back;

  private ExactTree(LinkGraph graph, int subsets) {
    this.graph = graph;
    cost = new double[subsets][graph.nodes()];
    back = new int[subsets][graph.nodes()];
  }

  /** Steps of the sum: 3^k·nodes + 2^k·links, k one less than the nodes to join. */
  static double steps(int ends, LinkGraph graph) {
    int k = ends - 1;
    return Math.pow(3, k) * graph.nodes() + Math.pow(2, k) * graph.links();
  }

  /**
   * Links of the cheapest tree.
   *
   * @param ends nodes to join, connected, two at least
   */
  static BitSet of(LinkGraph graph, List<Integer> ends) {
    int k = ends.size() - 1;
    ExactTree tree = new ExactTree(graph, 1 << k);
    for (int subset = 1; subset < 1 << k; subset++) {
      tree.fill(subset, ends);
    }
    BitSet keep = new BitSet();
    ends.forEach(keep::set);
    return graph.tidied(tree.links((1 << k) - 1, ends.get(k)), keep);
  }

  private void fill(int subset, List<Integer> ends) {
    double[] least = cost[subset];
    int[] from = back[subset];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(from, Labels.START);
    int first = Integer.lowestOneBit(subset);
    if (subset == first) {
      least[ends.get(Integer.numberOfTrailingZeros(first))] = 0;
    }
    for (int part = (subset - 1) & subset; part > 0; part = (part - 1) & subset) {
      if ((part & first) != 0) {
        double[] one = cost[part];
        double[] two = cost[subset ^ part];
        for (int node = 0; node < least.length; node++) {
          double both = one[node] + two[node];
          if (both < least[node]) {
            least[node] = both;
            from[node] = split(part);
          }
        }
      }
    }
    Labels.spread(graph, least, from);
  }

  /** A split as a number below that of the start; {@link #part} undoes it. */
  private static int split(int part) {
    return -1 - part;
  }

  private static int part(int split) {
    return -1 - split;
  }

  /** Walks the choices back. Where costs of zero tie, a link may come up twice. */
  private BitSet links(int whole, int end) {
    BitSet links = new BitSet();
    Deque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {whole, end});
    while (!open.isEmpty()) {
      int[] at = open.pop();
      int subset = at[0];
      int node = at[1];
      int choice = back[subset][node];
      while (choice >= 0) {
        links.set(choice);
        node = graph.other(choice, node);
        choice = back[subset][node];
      }
      if (choice != Labels.START) {
        open.push(new int[] {part(choice), node});
        open.push(new int[] {subset ^ part(choice), node});
      }
    }
    return links;
  }
}
