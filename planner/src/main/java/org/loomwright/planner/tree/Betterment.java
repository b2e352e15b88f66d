package org.loomwright.planner.tree;

import java.util.BitSet;

/**
 * Makes a tree cheaper by small changes until none helps: a further node is taken in where branches
 * meet, such a node is given up, or a stretch between two branch nodes is replaced by the cheapest
 * way between what it held together. The changes are tried in a fixed order.
 */
final class Betterment {
  private final LinkGraph graph;
  private final BitSet keep;
  private final Closure closure;

  /**
   * For trees over some nodes.
   *
   * @param keep the nodes to join
   */
  Betterment(LinkGraph graph, BitSet keep, Closure closure) {
    this.graph = graph;
    this.keep = keep;
    this.closure = closure;
  }

  /** The bettered tree; its links join the nodes to keep and cost no more than those given. */
  BitSet of(BitSet start) {
    BitSet tree = start;
    for (int round = 0; round < 10 * graph.nodes() + 100; round++) {
      BitSet changed = changed(tree);
      if (!Closeness.less(graph.cost(changed), graph.cost(tree))) {
        return tree;
      }
      tree = changed;
    }
    return tree;
  }

  /** The first kind of change that helps, or the same tree. */
  private BitSet changed(BitSet tree) {
    BitSet moved = branchMoved(tree);
    return Closeness.less(graph.cost(moved), graph.cost(tree)) ? moved : stretchMoved(tree);
  }

  /** Where branches meet or end, one node more or one node less: the best such change. */
  private BitSet branchMoved(BitSet tree) {
    BitSet keys = keys(tree);
    BitSet best = tree;
    for (int node = 0; node < graph.nodes(); node++) {
      if (!keep.get(node)) {
        keys.flip(node);
        BitSet changed = graph.tidied(closure.over(keys).links(), keep);
        keys.flip(node);
        if (Closeness.less(graph.cost(changed), graph.cost(best))) {
          best = changed;
        }
      }
    }
    return best;
  }

  /** A stretch between two keys replaced by the cheapest way between both sides: the best such. */
  private BitSet stretchMoved(BitSet tree) {
    BitSet keys = keys(tree);
    BitSet best = tree;
    BitSet done = new BitSet();
    for (int key = keys.nextSetBit(0); key >= 0; key = keys.nextSetBit(key + 1)) {
      for (int link : graph.at(key)) {
        if (tree.get(link) && !done.get(link)) {
          BitSet stretch = stretch(tree, keys, key, link);
          done.or(stretch);
          BitSet changed = without(tree, stretch, key);
          if (Closeness.less(graph.cost(changed), graph.cost(best))) {
            best = changed;
          }
        }
      }
    }
    return best;
  }

  private BitSet stretch(BitSet tree, BitSet keys, int key, int link) {
    BitSet stretch = new BitSet();
    stretch.set(link);
    int node = graph.other(link, key);
    while (!keys.get(node)) {
      for (int next : graph.at(node)) {
        if (tree.get(next) && !stretch.get(next)) {
          stretch.set(next);
          node = graph.other(next, node);
          break;
        }
      }
    }
    return stretch;
  }

  private BitSet without(BitSet tree, BitSet stretch, int key) {
    BitSet rest = (BitSet) tree.clone();
    rest.andNot(stretch);
    BitSet side = graph.reached(key, rest);
    BitSet others = graph.touched(rest);
    others.or(keys(tree));
    others.andNot(side);
    Labels ways = Labels.from(graph, side);
    int nearest = others.nextSetBit(0);
    for (int node = nearest; node >= 0; node = others.nextSetBit(node + 1)) {
      if (ways.cost(node) < ways.cost(nearest)) {
        nearest = node;
      }
    }
    ways.addPath(graph, nearest, rest);
    return graph.tidied(rest, keep);
  }

  /** The nodes to join and those where three or more links of the tree meet. */
  private BitSet keys(BitSet tree) {
    BitSet keys = (BitSet) keep.clone();
    int[] degrees = graph.degrees(tree);
    for (int node = 0; node < degrees.length; node++) {
      if (degrees[node] > 2) {
        keys.set(node);
      }
    }
    return keys;
  }
}
