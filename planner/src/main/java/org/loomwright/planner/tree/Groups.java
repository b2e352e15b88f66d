package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Joins groups of nodes by trees that groups may share. The cheapest forest falls into trees, and
 * each tree is the cheapest over the nodes of the groups it holds together; so with few groups the
 * best of all ways to split the groups among trees is the best forest.
 */
final class Groups {
  /** Up to so many groups every split among trees is weighed. */
  static final int EVERY = 5;

  private final TreeFinder trees;
  private final List<Pair> pairs;

  private Groups(TreeFinder trees, List<Pair> pairs) {
    this.trees = trees;
    this.pairs = pairs;
  }

  /**
   * A forest that joins all pairs, without a link that no pair uses.
   *
   * @param links its links
   * @param leastCost no forest that joins the pairs costs less
   */
  record Joined(BitSet links, double leastCost) {}

  /** A tree over some groups, or what several of them cost together. */
  private record Part(BitSet links, double cost, double leastCost) {
    Part and(Part other) {
      BitSet both = (BitSet) links.clone();
      both.or(other.links);
      return new Part(both, cost + other.cost, leastCost + other.leastCost);
    }
  }

  /** Nodes held together by one tree. */
  private record Held(Set<String> nodes, Part part) {}

  /**
   * Joins the groups; empty when the nodes of a group are not connected.
   *
   * @param groups nodes to be joined with each other, no node in two groups
   * @param pairs what must be joined, each within a group
   */
  static Optional<Joined> joined(TreeFinder trees, List<Set<String>> groups, List<Pair> pairs) {
    Groups all = new Groups(trees, pairs);
    return groups.size() <= EVERY ? all.bestSplit(groups) : all.untilApart(groups);
  }

  /** Best split of every set of groups, from the best splits of smaller sets. */
  private Optional<Joined> bestSplit(List<Set<String>> groups) {
    int whole = (1 << groups.size()) - 1;
    List<Optional<Part>> tree = new ArrayList<>();
    List<Optional<Part>> best = new ArrayList<>();
    List<Double> least = new ArrayList<>();
    Part none = new Part(new BitSet(), 0, 0);
    tree.add(Optional.of(none));
    best.add(Optional.of(none));
    least.add(0.0);
    for (int set = 1; set <= whole; set++) {
      tree.add(tree(nodes(groups, set)));
      Optional<Part> cheapest = Optional.empty();
      double lowest = Double.POSITIVE_INFINITY;
      int first = Integer.lowestOneBit(set);
      for (int part = set; part > 0; part = (part - 1) & set) {
        Optional<Part> one = tree.get(part);
        Optional<Part> rest = best.get(set ^ part);
        if ((part & first) != 0 && one.isPresent() && rest.isPresent()) {
          Part both = one.get().and(rest.get());
          lowest = Math.min(lowest, one.get().leastCost() + least.get(set ^ part));
          if (cheapest.isEmpty() || Closeness.less(both.cost(), cheapest.get().cost())) {
            cheapest = Optional.of(both);
          }
        }
      }
      best.add(cheapest);
      least.add(lowest);
    }
    return best.get(whole).map(part -> new Joined(used(part.links()), least.get(whole)));
  }

  private static Set<String> nodes(List<Set<String>> groups, int set) {
    Set<String> nodes = new LinkedHashSet<>();
    for (int group = 0; group < groups.size(); group++) {
      if ((set >> group & 1) != 0) {
        nodes.addAll(groups.get(group));
      }
    }
    return nodes;
  }

  /** A tree for each group; two that touch become one, until none do. */
  private Optional<Joined> untilApart(List<Set<String>> groups) {
    List<Held> held = new ArrayList<>();
    double least = MoatBound.of(trees.graph(), pairs);
    for (Set<String> nodes : groups) {
      Optional<Part> part = tree(nodes);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      held.add(new Held(nodes, part.get()));
      least = Math.max(least, part.get().leastCost());
    }
    boolean apart = false;
    while (!apart) {
      apart = true;
      for (int one = 0; one < held.size() && apart; one++) {
        for (int two = one + 1; two < held.size() && apart; two++) {
          if (touch(held.get(one), held.get(two))) {
            Held both = both(held.get(one), held.get(two));
            held.remove(two);
            held.set(one, both);
            apart = false;
          }
        }
      }
    }
    BitSet links = new BitSet();
    held.forEach(tree -> links.or(tree.part().links()));
    return Optional.of(new Joined(used(links), least));
  }

  private boolean touch(Held one, Held two) {
    return trees
        .graph()
        .touched(one.part().links())
        .intersects(trees.graph().touched(two.part().links()));
  }

  /** Trees that touch, joined anew or, where that is not cheaper, as they are. */
  private Held both(Held one, Held two) {
    Set<String> nodes = new LinkedHashSet<>(one.nodes());
    nodes.addAll(two.nodes());
    Part asTheyAre = one.part().and(two.part());
    Part anew = tree(nodes).orElse(asTheyAre);
    return new Held(nodes, anew.cost() <= asTheyAre.cost() ? anew : asTheyAre);
  }

  private Optional<Part> tree(Set<String> nodes) {
    return trees
        .joining(nodes)
        .map(
            tree -> {
              Set<String> ids = new HashSet<>(tree.links());
              BitSet links = new BitSet();
              for (int i = 0; i < trees.links().size(); i++) {
                links.set(i, ids.contains(trees.links().get(i).id()));
              }
              return new Part(links, tree.cost(), tree.leastCost());
            });
  }

  /** Without cycles and without links that no pair's path uses. */
  private BitSet used(BitSet links) {
    LinkGraph graph = trees.graph();
    return new Rooted(graph, graph.spanning(links)).used(pairs);
  }
}
