package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.alg.steiner.KouMarkowskyBermanAlgorithm;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.loomwright.planner.tree.Link;

/** Invented runs between places that lie in a rectangle, and a plain reference for trees. */
final class RunGraph {
  private static final long SEED = 4;

  private RunGraph() {}

  private record Spot(double xMm, double yMm) {
    double to(Spot other) {
      return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
  }

  /**
   * Runs between places in a rectangle of 4 m by 1.6 m, short ones first; all places connected.
   *
   * @param places number of places
   * @param runs number of runs, at least one less
   */
  static List<Link> of(int places, int runs) {
    Random random = new Random(SEED);
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      spots.add(new Spot(4000 * random.nextDouble(), 1600 * random.nextDouble()));
    }
    List<Link> links = new ArrayList<>();
    Set<Set<String>> taken = new LinkedHashSet<>();
    for (int i = 1; i < places; i++) {
      int nearest = 0;
      for (int j = 1; j < i; j++) {
        if (spots.get(i).to(spots.get(j)) < spots.get(i).to(spots.get(nearest))) {
          nearest = j;
        }
      }
      add(links, taken, spots, i, nearest);
    }
    while (links.size() < runs) {
      int i = random.nextInt(places);
      int second = -1;
      for (int j = 0; j < places; j++) {
        if (j != i
            && !taken.contains(Set.of(name(i), name(j)))
            && (second < 0 || spots.get(i).to(spots.get(j)) < spots.get(i).to(spots.get(second)))) {
          second = j;
        }
      }
      add(links, taken, spots, i, second);
    }
    return links;
  }

  private static void add(
      List<Link> links, Set<Set<String>> taken, List<Spot> spots, int from, int to) {
    taken.add(Set.of(name(from), name(to)));
    links.add(
        new Link(
            "run" + links.size(),
            name(from),
            name(to),
            Math.rint(spots.get(from).to(spots.get(to)))));
  }

  /** Every seventh place round and round, until there are enough. */
  static Set<String> joined(int places, int count) {
    Set<String> joined = new LinkedHashSet<>();
    for (int i = 0; joined.size() < count; i++) {
      joined.add(name(7 * i % places));
    }
    return joined;
  }

  private static String name(int place) {
    return "place" + place;
  }

  /** Cost of the least spanning tree over the shortest paths, without betterment. */
  static double closureCost(List<Link> links, Set<String> joined) {
    SimpleWeightedGraph<String, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    for (Link link : links) {
      graph.addVertex(link.from());
      graph.addVertex(link.to());
      graph.setEdgeWeight(graph.addEdge(link.from(), link.to()), link.cost());
    }
    return new KouMarkowskyBermanAlgorithm<>(graph).getSteinerTree(joined).getWeight();
  }
}
