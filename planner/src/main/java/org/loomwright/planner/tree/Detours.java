package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Shortens paths that are long beside the shortest there is. For such a pair the links of its own
 * shortest path are put in, and of every cycle that arises the dearest other link goes out. The
 * change that leaves the fewest over-long paths, and among those costs least, is made; then again,
 * until none helps. Changes are judged one by one: two that help only together are not found.
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
    BitSet best = forest;
    List<Integer> bestLong = overlong(best);
    boolean better = true;
    while (better) {
      better = false;
      BitSet base = best;
      for (int pair : bestLong) {
        BitSet changed = straightened(base, shortestLinks.get(pair));
        List<Integer> left = overlong(changed);
        if (left.size() < bestLong.size()
            || (left.size() == bestLong.size()
                && Closeness.less(graph.cost(changed), graph.cost(best)))) {
          best = changed;
          bestLong = left;
          better = true;
        }
      }
    }
    return best;
  }

  private BitSet straightened(BitSet forest, BitSet path) {
    BitSet changed = (BitSet) forest.clone();
    for (int link = path.nextSetBit(0); link >= 0; link = path.nextSetBit(link + 1)) {
      if (!changed.get(link)) {
        Rooted rooted = new Rooted(graph, changed);
        if (rooted.joined(graph.from(link), graph.to(link))) {
          BitSet others = rooted.path(graph.from(link), graph.to(link));
          others.andNot(path);
          changed.clear(dearest(others));
        }
        changed.set(link);
      }
    }
    return new Rooted(graph, changed).used(pairs);
  }

  /** The dearest link, the last where costs tie. */
  private int dearest(BitSet links) {
    int dearest = links.nextSetBit(0);
    for (int link = dearest; link >= 0; link = links.nextSetBit(link + 1)) {
      if (graph.cost(link) >= graph.cost(dearest)) {
        dearest = link;
      }
    }
    return dearest;
  }
}
