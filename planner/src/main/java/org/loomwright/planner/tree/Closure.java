package org.loomwright.planner.tree;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;

/** The least spanning tree over the cheapest paths between chosen nodes. */
final class Closure {
  private final LinkGraph graph;
  private final Map<Integer, Labels> labels;

  /**
   * For a graph.
   *
   * @param labels paths found so far, by start; more are put in as needed
   */
  Closure(LinkGraph graph, Map<Integer, Labels> labels) {
    this.graph = graph;
    this.labels = labels;
  }

  /**
   * A spanning tree of paths.
   *
   * @param links links of all its paths, each once
   * @param cost sum of the costs of the paths
   */
  record Tree(BitSet links, double cost) {}

  /**
   * The tree over some nodes (R. C. Prim, "Shortest connection networks and some generalizations",
   * Bell System Technical Journal 36, 1957).
   *
   * @param chosen nodes, connected, one at least
   */
  Tree over(BitSet chosen) {
    int[] nodes = chosen.stream().toArray();
    double[] nearest = new double[nodes.length];
    int[] by = new int[nodes.length];
    boolean[] in = new boolean[nodes.length];
    Arrays.fill(nearest, Double.POSITIVE_INFINITY);
    BitSet links = new BitSet(graph.links());
    double cost = 0;
    int last = 0;
    in[0] = true;
    for (int taken = 1; taken < nodes.length; taken++) {
      Labels paths = from(nodes[last]);
      int next = -1;
      for (int i = 0; i < nodes.length; i++) {
        if (in[i]) {
          continue;
        }
        if (paths.cost(nodes[i]) < nearest[i]) {
          nearest[i] = paths.cost(nodes[i]);
          by[i] = last;
        }
        if (next < 0 || nearest[i] < nearest[next]) {
          next = i;
        }
      }
      in[next] = true;
      cost += nearest[next];
      from(nodes[by[next]]).addPath(graph, nodes[next], links);
      last = next;
    }
    return new Tree(links, cost);
  }

  private Labels from(int node) {
    return labels.computeIfAbsent(node, start -> Labels.from(graph, (int) start));
  }
}
