package org.loomwright.planner.tree;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** A forest with a root for each tree, to read paths from. */
final class Rooted {
  private final LinkGraph graph;
  private final int[] up;
  private final int[] depth;
  private final int[] root;

  /**
   * Roots a forest.
   *
   * @param forest links without a cycle
   */
  Rooted(LinkGraph graph, BitSet forest) {
    this.graph = graph;
    int nodes = graph.nodes();
    up = new int[nodes];
    depth = new int[nodes];
    root = new int[nodes];
    Arrays.fill(root, -1);
    int[] open = new int[nodes];
    for (int start = 0; start < nodes; start++) {
      if (root[start] < 0) {
        root[start] = start;
        up[start] = Labels.START;
        int count = 0;
        open[count++] = start;
        while (count > 0) {
          int node = open[--count];
          for (int link : graph.at(node)) {
            int other = graph.other(link, node);
            if (forest.get(link) && root[other] < 0) {
              root[other] = start;
              up[other] = link;
              depth[other] = depth[node] + 1;
              open[count++] = other;
            }
          }
        }
      }
    }
  }

  /** Whether the same tree holds both nodes. */
  boolean joined(int a, int b) {
    return root[a] == root[b];
  }

  /** Links of the path between two joined nodes. */
  BitSet path(int a, int b) {
    BitSet path = new BitSet();
    int one = a;
    int two = b;
    while (one != two) {
      if (depth[one] >= depth[two]) {
        path.set(up[one]);
        one = graph.other(up[one], one);
      } else {
        path.set(up[two]);
        two = graph.other(up[two], two);
      }
    }
    return path;
  }

  /** Links of the paths of all pairs; each must be joined. */
  BitSet used(List<Pair> pairs) {
    BitSet used = new BitSet();
    pairs.forEach(pair -> used.or(path(pair.from(), pair.to())));
    return used;
  }
}
