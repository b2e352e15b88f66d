package org.loomwright.planner.tree;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Least cost from some start to every node (E. W. Dijkstra, "A note on two problems in connexion
 * with graphs", Numerische Mathematik 1, 1959).
 */
final class Labels {
  /** In place of a link: the path starts here. */
  static final int START = -1;

  private final double[] cost;
  private final int[] via;

  private Labels(double[] cost, int[] via) {
    this.cost = cost;
    this.via = via;
  }

  /** Paths from the nearest of some nodes. */
  static Labels from(LinkGraph graph, BitSet starts) {
    double[] cost = new double[graph.nodes()];
    int[] via = new int[graph.nodes()];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    Arrays.fill(via, START);
    starts.stream().forEach(node -> cost[node] = 0);
    spread(graph, cost, via);
    return new Labels(cost, via);
  }

  /** Paths from a node. */
  static Labels from(LinkGraph graph, int start) {
    BitSet starts = new BitSet();
    starts.set(start);
    return from(graph, starts);
  }

  /**
   * Lowers the labels of all nodes as far as links allow.
   *
   * @param cost in: labels to start from, infinite where there is none; out: least labels
   * @param via out: the link by which a lowered label came
   */
  static void spread(LinkGraph graph, double[] cost, int[] via) {
    IndexHeap waiting = new IndexHeap(cost);
    for (int node = 0; node < cost.length; node++) {
      if (cost[node] < Double.POSITIVE_INFINITY) {
        waiting.put(node);
      }
    }
    while (!waiting.isEmpty()) {
      int node = waiting.take();
      for (int link : graph.at(node)) {
        int other = graph.other(link, node);
        double through = cost[node] + graph.cost(link);
        if (through < cost[other]) {
          cost[other] = through;
          via[other] = link;
          waiting.put(other);
        }
      }
    }
  }

  /** Least cost to a node, infinite when it is out of reach. */
  double cost(int node) {
    return cost[node];
  }

  /** Adds the links of the path to a node that is in reach. */
  void addPath(LinkGraph graph, int node, BitSet links) {
    int at = node;
    while (via[at] != START) {
      links.set(via[at]);
      at = graph.other(via[at], at);
    }
  }
}
