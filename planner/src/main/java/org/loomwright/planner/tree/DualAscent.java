package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * A lower bound on the cost of every tree over some nodes (R. T. Wong, "A dual ascent approach for
 * Steiner tree problems on a directed graph", Mathematical Programming 28, 1984). Seen from a root,
 * every set of nodes that holds one of the nodes to join but not the root must be entered by some
 * link. The sums charged for such sets never exceed a link's cost in either direction; their total
 * is the bound.
 */
final class DualAscent {
  private final LinkGraph graph;
  private final List<Integer> ends;
  private final int root;
  private final double[] left;
  private double bound;

  private DualAscent(LinkGraph graph, List<Integer> ends, int root) {
    this.graph = graph;
    this.ends = ends;
    this.root = root;
    left = new double[2 * graph.links()];
    Arrays.setAll(left, arc -> graph.cost(arc / 2));
  }

  /**
   * What was found.
   *
   * @param bound no tree costs less
   * @param used links whose cost is used up in one direction; they join all the nodes
   */
  record Ascent(double bound, BitSet used) {}

  /**
   * Charges sets until the root is joined to all.
   *
   * @param ends nodes to join, connected
   * @param root one of them
   */
  static Ascent from(LinkGraph graph, List<Integer> ends, int root) {
    DualAscent ascent = new DualAscent(graph, ends, root);
    List<BitSet> sets = ascent.sets();
    while (!sets.isEmpty()) {
      BitSet smallest = sets.get(0);
      for (BitSet set : sets) {
        if (set.cardinality() < smallest.cardinality()) {
          smallest = set;
        }
      }
      ascent.charge(smallest);
      sets = ascent.sets();
    }
    BitSet used = new BitSet();
    for (int link = 0; link < graph.links(); link++) {
      used.set(link, ascent.left[2 * link] == 0 || ascent.left[2 * link + 1] == 0);
    }
    return new Ascent(ascent.bound, used);
  }

  /** For each node not yet reached from the root: what leads to it at no further charge. */
  private List<BitSet> sets() {
    BitSet reached = free(root, true);
    List<BitSet> sets = new ArrayList<>();
    for (int end : ends) {
      if (!reached.get(end)) {
        sets.add(free(end, false));
      }
    }
    return sets;
  }

  /** Nodes that a node leads to, or that lead to it, over directions that are used up. */
  private BitSet free(int start, boolean forth) {
    BitSet found = new BitSet(graph.nodes());
    int[] waiting = new int[graph.nodes()];
    int count = 0;
    found.set(start);
    waiting[count++] = start;
    while (count > 0) {
      int node = waiting[--count];
      for (int link : graph.at(node)) {
        int other = graph.other(link, node);
        double rest = forth ? left[arc(link, other)] : left[arc(link, node)];
        if (rest == 0 && !found.get(other)) {
          found.set(other);
          waiting[count++] = other;
        }
      }
    }
    return found;
  }

  private void charge(BitSet set) {
    double charge = Double.POSITIVE_INFINITY;
    List<Integer> entering = new ArrayList<>();
    for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
      for (int link : graph.at(node)) {
        if (!set.get(graph.other(link, node))) {
          entering.add(arc(link, node));
          charge = Math.min(charge, left[arc(link, node)]);
        }
      }
    }
    for (int arc : entering) {
      left[arc] -= charge;
    }
    bound += charge;
  }

  /** The direction of a link that leads into a node. */
  private int arc(int link, int into) {
    return graph.to(link) == into ? 2 * link : 2 * link + 1;
  }
}
