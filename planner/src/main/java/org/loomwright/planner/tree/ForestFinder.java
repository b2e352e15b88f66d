package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A cheap forest that joins given pairs of nodes, each by exactly one path.
 *
 * <p>Pairs that share nodes form a group, and one tree joins all nodes of a group; groups may share
 * a tree. What is proven: every tree is within the bound of {@link TreeFinder} for the nodes it
 * joins. With up to {@value Groups#EVERY} groups every way to share trees is weighed, so the forest
 * costs least of all when all the trees are exact. With more groups those whose trees touch are
 * joined anew by one tree, until no two touch; then the forest as a whole is not proven to cost
 * least, but {@link Forest#leastCost} is a proven lower bound all the same. Links on no pair's path
 * are dropped.
 *
 * <p>Short paths may cost more than the cheapest forest: see {@link #joining}. The same links and
 * pairs always give the same forest. Safe to use from several threads.
 */
public final class ForestFinder {
  private final TreeFinder trees;

  private ForestFinder(TreeFinder trees) {
    this.trees = trees;
  }

  /**
   * Over some links; the nodes are the links' ends.
   *
   * @throws IllegalArgumentException when two links have the same id
   */
  public static ForestFinder of(List<Link> links) {
    return new ForestFinder(TreeFinder.of(links));
  }

  /** As {@link #of(List)}, with another limit on the steps of the exact sum for a tree. */
  static ForestFinder of(List<Link> links, double limit) {
    return new ForestFinder(TreeFinder.of(links, limit));
  }

  /**
   * A cheap forest that joins all pairs; empty when a pair is not connected.
   *
   * <p>Where a pair's path costs more than {@code mostDetour} times its shortest path, dearer trees
   * are tried that hold the pair's shortest path; a forest with fewer such pairs is preferred, then
   * the cheaper one. Pairs that stay over-long are named in the notes.
   *
   * @param pairs what must be joined; a pair of one node and itself needs nothing
   * @param mostDetour one or more; infinite to let paths be as long as they come
   * @throws IllegalArgumentException when {@code mostDetour} is less than one or no number
   */
  public Optional<Forest> joining(List<Ends> pairs, double mostDetour) {
    if (!(mostDetour >= 1)) {
      throw new IllegalArgumentException("mostDetour " + mostDetour + " must be one or more");
    }
    Map<Ends, Pair> numbered = new LinkedHashMap<>();
    for (Ends ends : pairs) {
      if (!ends.from().equals(ends.to())) {
        Optional<Integer> from = trees.number(ends.from());
        Optional<Integer> to = trees.number(ends.to());
        if (from.isEmpty() || to.isEmpty()) {
          return Optional.empty();
        }
        numbered.put(ends, new Pair(from.get(), to.get()));
      }
    }
    List<Set<String>> groups = grouped(numbered);
    return Groups.joined(trees, groups, List.copyOf(numbered.values()))
        .map(cheapest -> forest(cheapest, numbered, mostDetour));
  }

  /** Sets of nodes joined by pairs that share nodes, in the order of the pairs. */
  private List<Set<String>> grouped(Map<Ends, Pair> pairs) {
    Sets sets = new Sets(trees.graph().nodes());
    pairs.values().forEach(pair -> sets.join(pair.from(), pair.to()));
    Map<Integer, Set<String>> groups = new LinkedHashMap<>();
    pairs.forEach(
        (ends, pair) ->
            groups
                .computeIfAbsent(sets.find(pair.from()), head -> new LinkedHashSet<>())
                .addAll(List.of(ends.from(), ends.to())));
    return List.copyOf(groups.values());
  }

  private Forest forest(Groups.Joined cheapest, Map<Ends, Pair> numbered, double mostDetour) {
    LinkGraph graph = trees.graph();
    List<Ends> ends = List.copyOf(numbered.keySet());
    List<Pair> pairs = List.copyOf(numbered.values());
    Detours detours = new Detours(graph, pairs, mostDetour);
    BitSet links = detours.shortened(cheapest.links());
    double cost = graph.cost(links);
    double cheapestCost = graph.cost(cheapest.links());
    boolean exact = !Closeness.less(cheapest.leastCost(), cost);
    List<String> notes = new ArrayList<>();
    if (Closeness.less(cheapest.leastCost(), cheapestCost)) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the cheapest forest found is at most %.2f %% dearer than the least possible",
              (cheapestCost / cheapest.leastCost() - 1) * 100));
    }
    if (Closeness.less(cheapestCost, cost)) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%.2f %% dearer than the cheapest forest found, to keep paths within %.2f times the"
                  + " shortest",
              (cost / cheapestCost - 1) * 100,
              mostDetour));
    }
    Rooted rooted = new Rooted(graph, links);
    for (int i : detours.overlong(links)) {
      double path = graph.cost(rooted.path(pairs.get(i).from(), pairs.get(i).to()));
      notes.add(
          String.format(
              Locale.ROOT,
              "%s to %s: the path costs %.6g, the shortest would cost %.6g; more than %.2f times",
              ends.get(i).from(),
              ends.get(i).to(),
              path,
              detours.shortest(i),
              mostDetour));
    }
    return new Forest(
        links.stream().mapToObj(trees.links()::get).toList(),
        cost,
        exact ? cost : cheapest.leastCost(),
        exact,
        notes);
  }
}
