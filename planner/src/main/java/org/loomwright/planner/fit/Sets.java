package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Families of sets of numbers of which none contains another. Sets are rising lists. */
final class Sets {
  /** More sets are not kept: the smallest are among those kept. */
  static final int MOST_KEPT = 64;

  /** The family that holds only the empty set. */
  static final List<List<Integer>> NOTHING = List.of(List.of());

  private static final Comparator<List<Integer>> ORDER =
      Comparator.<List<Integer>>comparingInt(List::size).thenComparing(Sets::compare);

  private Sets() {}

  /** Smallest unions of one set of each family. */
  static List<List<Integer>> both(List<List<Integer>> some, List<List<Integer>> others) {
    List<List<Integer>> unions = new ArrayList<>();
    for (List<Integer> one : some) {
      for (List<Integer> other : others) {
        TreeSet<Integer> union = new TreeSet<>(one);
        union.addAll(other);
        unions.add(List.copyOf(union));
      }
    }
    return least(unions);
  }

  /** The sets that contain no other of them, smallest first. */
  static List<List<Integer>> least(List<List<Integer>> sets) {
    List<List<Integer>> kept = new ArrayList<>();
    for (List<Integer> set : sets.stream().sorted(ORDER).toList()) {
      if (kept.size() < MOST_KEPT && kept.stream().noneMatch(set::containsAll)) {
        kept.add(set);
      }
    }
    return List.copyOf(kept);
  }

  private static int compare(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      int order = Integer.compare(a.get(i), b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(a.size(), b.size());
  }
}
