package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A cheap tree where the exact sum would take too long. It starts from the least spanning tree over
 * the paths between the nodes (L. Kou, G. Markowsky and L. Berman, "A fast algorithm for Steiner
 * trees", Acta Informatica 15, 1981), which costs at most 2·(1 - 1/n) times the least, n being the
 * number of nodes to join; from trees that take in the nearest node again and again (H. Takahashi
 * and A. Matsuyama, "An approximate solution for the Steiner problem in graphs", Math. Japonica 24,
 * 1980); and from the links left free by {@link DualAscent}. Each is bettered by {@link
 * Betterment}; the cheapest stays, so the bound of the first holds.
 */
final class NearTree {
  /** Nodes from which a tree is grown and a bound is sought, at most. */
  private static final int ROOTS = 8;

  /** Steps of all dual ascents together, about; one is always made. */
  private static final double ASCENT_STEPS = 2e7;

  private final LinkGraph graph;
  private final List<Integer> ends;
  private final BitSet keep = new BitSet();
  private final Map<Integer, Labels> labels = new HashMap<>();

  private NearTree(LinkGraph graph, List<Integer> ends) {
    this.graph = graph;
    this.ends = ends;
    ends.forEach(keep::set);
  }

  /**
   * What was found.
   *
   * @param links the tree
   * @param leastCost no tree over these nodes costs less
   */
  record Near(BitSet links, double leastCost) {}

  /**
   * Links of a cheap tree.
   *
   * @param ends nodes to join, connected, two at least
   */
  static Near of(LinkGraph graph, List<Integer> ends) {
    return new NearTree(graph, ends).find();
  }

  /** The most that the cost can be of the least, for a number of nodes to join. */
  static double factor(int ends) {
    return 2 * (1 - 1.0 / ends);
  }

  private Near find() {
    Closure whole = new Closure(graph, labels);
    Closure.Tree first = whole.over(keep);
    double least = first.cost() / factor(ends.size());
    List<BitSet> starts = new ArrayList<>();
    starts.add(graph.tidied(first.links(), keep));
    starts.add(grown());
    double one = (double) graph.links() * graph.links() * ends.size();
    long ascents = Math.max(1, Math.min(Math.min(ROOTS, ends.size()), (long) (ASCENT_STEPS / one)));
    double highest = -1;
    BitSet used = new BitSet();
    for (int root : ends.subList(0, (int) ascents)) {
      DualAscent.Ascent ascent = DualAscent.from(graph, ends, root);
      if (ascent.bound() > highest) {
        highest = ascent.bound();
        used = ascent.used();
      }
    }
    starts.add(graph.tidied(used, keep));
    Betterment betterment = new Betterment(graph, keep, whole);
    BitSet best = new BitSet();
    double bestCost = Double.POSITIVE_INFINITY;
    for (BitSet start : starts) {
      BitSet tree = betterment.of(start);
      if (bestCost == Double.POSITIVE_INFINITY || Closeness.less(graph.cost(tree), bestCost)) {
        best = tree;
        bestCost = graph.cost(tree);
      }
    }
    return new Near(best, Math.max(least, highest));
  }

  /** The best of some trees grown from one node to the nearest of the rest. */
  private BitSet grown() {
    BitSet best = new BitSet();
    double bestCost = Double.POSITIVE_INFINITY;
    for (int root : ends.subList(0, Math.min(ROOTS, ends.size()))) {
      BitSet tree = grownFrom(root);
      double cost = graph.cost(tree);
      if (cost < bestCost) {
        best = tree;
        bestCost = cost;
      }
    }
    return best;
  }

  private BitSet grownFrom(int root) {
    BitSet tree = new BitSet();
    BitSet nodes = new BitSet();
    nodes.set(root);
    BitSet open = (BitSet) keep.clone();
    open.clear(root);
    while (!open.isEmpty()) {
      Labels near = Labels.from(graph, nodes);
      int nearest = open.nextSetBit(0);
      for (int end = nearest; end >= 0; end = open.nextSetBit(end + 1)) {
        if (near.cost(end) < near.cost(nearest)) {
          nearest = end;
        }
      }
      near.addPath(graph, nearest, tree);
      nodes.or(graph.touched(tree));
      open.andNot(nodes);
    }
    return graph.tidied(tree, keep);
  }
}
