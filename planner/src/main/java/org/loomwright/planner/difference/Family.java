package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import org.loomwright.model.design.Case;

/**
 * The cases of needs that were or are planned together.
 *
 * @param same cases that are the same before and after
 * @param gone other cases before
 * @param come other cases after
 */
record Family(List<Pair> same, List<Case> gone, List<Case> come) {
  Family {
    same = List.copyOf(same);
    gone = List.copyOf(gone);
    come = List.copyOf(come);
  }

  /** A case before and after. */
  record Pair(Case before, Case after) {}

  static List<Family> of(List<Case> before, List<Case> after) {
    List<Set<String>> needs = new ArrayList<>();
    for (List<Case> cases : List.of(before, after)) {
      for (Case one : cases) {
        Set<String> joined = new LinkedHashSet<>(one.ways().keySet());
        List<Set<String>> touched =
            needs.stream().filter(it -> it.stream().anyMatch(joined::contains)).toList();
        int at = touched.isEmpty() ? needs.size() : needs.indexOf(touched.get(0));
        touched.forEach(joined::addAll);
        needs.removeAll(touched);
        needs.add(Math.min(at, needs.size()), joined);
      }
    }
    return needs.stream().map(set -> match(touching(before, set), touching(after, set))).toList();
  }

  private static List<Case> touching(List<Case> cases, Set<String> needs) {
    return cases.stream()
        .filter(it -> it.ways().keySet().stream().anyMatch(needs::contains))
        .toList();
  }

  private static Family match(List<Case> before, List<Case> after) {
    List<Case> gone = new ArrayList<>(before);
    List<Case> come = new ArrayList<>(after);
    List<Pair> same = new ArrayList<>();
    pair(gone, come, same, (one, two) -> one.when().text().equals(two.when().text()));
    pair(gone, come, same, (one, two) -> one.ways().equals(two.ways()));
    if (gone.size() == 1 && come.size() == 1) {
      pair(gone, come, same, (one, two) -> true);
    }
    same.sort(Comparator.comparingInt(it -> after.indexOf(it.after())));
    return new Family(same, gone, come);
  }

  private static void pair(
      List<Case> gone, List<Case> come, List<Pair> same, BiPredicate<Case, Case> alike) {
    Set<Case> paired = new HashSet<>();
    for (Case one : List.copyOf(gone)) {
      come.stream()
          .filter(two -> alike.test(one, two) && !paired.contains(two))
          .findFirst()
          .ifPresent(
              two -> {
                paired.add(two);
                same.add(new Pair(one, two));
                gone.remove(one);
                come.remove(two);
              });
    }
  }
}
