package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Shortens paths that are long beside the shortest there is. For such a pair the links of its own
 * shortest path are put in one by one, and of every cycle that arises another link goes out: the
 * one that leaves the fewest over-long paths and then the least cost. Of the changes for all such
 * pairs the best is made by the same measure; then again, until none helps. Changes are judged pair
 * by pair: two that help only together are not found.
 */
final class Detours {
  private final LinkGraph graph;
  private final List<Pair> pairs;
  private final double most;
  private final List<Double> shortest = new ArrayList<>();
  private final List<BitSet> shortestLinks = new ArrayList<>();

  /**
   * For some pairs.
   *
   * @param pairs each connected in the graph
   * @param most how many times its shortest path a path may cost, one or more
   */
  Detours(LinkGraph graph, List<Pair> pairs, double most) {
    this.graph = graph;
    this.pairs = pairs;
    this.most = most;
    for (Pair pair : pairs) {
      Labels labels = Labels.from(graph, pair.from());
      BitSet links = new BitSet();
      labels.addPath(graph, pair.to(), links);
      shortest.add(labels.cost(pair.to()));
      shortestLinks.add(links);
    }
  }

  /** Least cost of a path for a pair, by its place among the pairs. */
  double shortest(int pair) {
    return shortest.get(pair);
  }

  /** Places of the pairs whose path is over-long in a forest that joins all pairs. */
  List<Integer> overlong(BitSet forest) {
    Rooted rooted = new Rooted(graph, forest);
    List<Integer> overlong = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      double path = graph.cost(rooted.path(pairs.get(i).from(), pairs.get(i).to()));
      if (Closeness.less(most * shortest.get(i), path)) {
        overlong.add(i);
      }
    }
    return overlong;
  }

  /** A forest that joins the same pairs with no more over-long paths. */
  BitSet shortened(BitSet forest) {
    Judged best = judged(forest);
    boolean better = true;
    while (better) {
      better = false;
      BitSet base = best.used();
      for (int pair : overlong(base)) {
        Judged changed = straightened(base, shortestLinks.get(pair));
        if (changed.betterThan(best)) {
          best = changed;
          better = true;
        }
      }
    }
    return best.used();
  }

  /** Links that paths use, how many paths are over-long, and the cost. */
  private record Judged(BitSet used, int overlong, double cost) {
    boolean betterThan(Judged other) {
      return overlong < other.overlong
          || (overlong == other.overlong && Closeness.less(cost, other.cost));
    }
  }

  private Judged judged(BitSet forest) {
    BitSet used = new Rooted(graph, forest).used(pairs);
    return new Judged(used, overlong(used).size(), graph.cost(used));
  }

  private Judged straightened(BitSet forest, BitSet path) {
    BitSet changed = (BitSet) forest.clone();
    for (int link = path.nextSetBit(0); link >= 0; link = path.nextSetBit(link + 1)) {
      if (!changed.get(link)) {
        Rooted rooted = new Rooted(graph, changed);
        boolean cycle = rooted.joined(graph.from(link), graph.to(link));
        BitSet others = cycle ? rooted.path(graph.from(link), graph.to(link)) : new BitSet();
        others.andNot(path);
        changed.set(link);
        if (cycle) {
          changed.clear(leastMissed(changed, others));
        }
      }
    }
    return judged(changed);
  }

  /** Of the links of a cycle that may go out, the one without which the rest is best. */
  private int leastMissed(BitSet links, BitSet candidates) {
    int first = candidates.nextSetBit(0);
    int missed = first;
    Judged best = judged(without(links, first));
    for (int link = first; link >= 0; link = candidates.nextSetBit(link + 1)) {
      Judged rest = judged(without(links, link));
      if (rest.betterThan(best)) {
        best = rest;
        missed = link;
      }
    }
    return missed;
  }

  private static BitSet without(BitSet links, int link) {
    BitSet rest = (BitSet) links.clone();
    rest.clear(link);
    return rest;
  }
}
