package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.loomwright.planner.builds.Rest;

/**
 * Finds which traits decide between outcomes that answers leave open. All smallest sets are found
 * among up to {@value #MOST_SEARCHED} traits; among more, all sets of up to {@value #MOST_TOGETHER}
 * traits and one of which none can be left out.
 */
final class Settling {
  private static final int MOST_SEARCHED = 10;
  private static final int MOST_TOGETHER = 2;

  private final List<String> traits;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<List<Rest>, Integer> kinds = new HashMap<>();

  /**
   * @param traits traits that were not asked for, in document order; the numbers in the sets are
   *     places in this list
   */
  Settling(List<String> traits) {
    this.traits = List.copyOf(traits);
    for (int i = 0; i < traits.size(); i++) {
      numbers.put(traits.get(i), i);
    }
  }

  /** What is left open of a decision whose outcomes have these rests; they share no build. */
  Left left(List<Rest> outcomes) {
    Left left = classesOnly(outcomes);
    return left.classes().size() < 2
        ? left
        : new Left(
            left.classes(),
            sets(left.classes().stream().map(outcomes::get).toList()),
            kinds.computeIfAbsent(outcomes, it -> kinds.size() + 1));
  }

  /** The same without what would decide. */
  static Left classesOnly(List<Rest> outcomes) {
    List<Integer> classes = new ArrayList<>();
    for (int i = 0; i < outcomes.size(); i++) {
      if (!outcomes.get(i).isEmpty()) {
        classes.add(i);
      }
    }
    return new Left(classes, Sets.NOTHING, 0);
  }

  private List<List<Integer>> sets(List<Rest> there) {
    TreeSet<Integer> support = new TreeSet<>();
    there.forEach(rest -> rest.traits().forEach(it -> support.add(number(it))));
    List<Integer> all = List.copyOf(support);
    int most = all.size() <= MOST_SEARCHED ? all.size() : MOST_TOGETHER;
    List<List<Integer>> found = new ArrayList<>();
    List<List<Integer>> grow = List.of(List.of());
    for (int size = 0; size <= most; size++) {
      List<List<Integer>> next = new ArrayList<>();
      for (List<Integer> set : grow) {
        if (decides(set, all, there)) {
          found.add(set);
          continue;
        }
        for (int more : all) {
          if (set.isEmpty() || more > set.get(set.size() - 1)) {
            List<Integer> bigger = new ArrayList<>(set);
            bigger.add(more);
            if (found.stream().noneMatch(bigger::containsAll)) {
              next.add(List.copyOf(bigger));
            }
          }
        }
      }
      grow = next;
    }
    if (all.size() > MOST_SEARCHED) {
      found.add(shrunk(all, there));
    }
    return Sets.least(found);
  }

  private List<Integer> shrunk(List<Integer> all, List<Rest> there) {
    List<Integer> kept = new ArrayList<>(all);
    for (Integer trait : all) {
      List<Integer> fewer = new ArrayList<>(kept);
      fewer.remove(trait);
      if (decides(fewer, all, there)) {
        kept = fewer;
      }
    }
    return List.copyOf(kept);
  }

  // Whether somebody who looks at these traits only can always say which outcome it is.
  private boolean decides(List<Integer> looked, List<Integer> all, List<Rest> there) {
    List<String> hidden = all.stream().filter(it -> !looked.contains(it)).map(traits::get).toList();
    List<Rest> seen = there.stream().map(it -> it.without(hidden)).toList();
    for (int i = 0; i < seen.size(); i++) {
      for (int j = i + 1; j < seen.size(); j++) {
        if (seen.get(i).meets(seen.get(j))) {
          return false;
        }
      }
    }
    return true;
  }

  private int number(String trait) {
    Integer number = numbers.get(trait);
    if (number == null) {
      throw new IllegalStateException("a rest that depends on the trait asked for " + trait);
    }
    return number;
  }
}
