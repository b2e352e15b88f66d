package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Two orders of partly the same things. */
final class Orders {
  private Orders() {}

  /** All things of both, in the later order; what is gone stands behind what it stood behind. */
  static <T> List<T> together(List<T> before, List<T> after) {
    Set<T> kept = new HashSet<>(after);
    Map<T, List<T>> gone = new HashMap<>();
    List<T> first = new ArrayList<>();
    List<T> behind = first;
    for (T one : before) {
      if (kept.contains(one)) {
        behind = gone.computeIfAbsent(one, it -> new ArrayList<>());
      } else {
        behind.add(one);
      }
    }
    List<T> all = new ArrayList<>(first);
    for (T one : after) {
      all.add(one);
      all.addAll(gone.getOrDefault(one, List.of()));
    }
    return all;
  }

  /**
   * The fewest things that, taken up and put down elsewhere, bring the first order into the second.
   *
   * @param before things, each once
   * @param after the same things, each once
   */
  static <T> Set<T> moved(List<T> before, List<T> after) {
    Map<T, Integer> was = new HashMap<>();
    for (int i = 0; i < before.size(); i++) {
      was.put(before.get(i), i);
    }
    // Longest rising row (patience sorting): what stands in it has stayed.
    int size = after.size();
    int[] position = after.stream().mapToInt(it -> was.getOrDefault(it, -1)).toArray();
    int[] previous = new int[size];
    int[] tails = new int[size];
    int length = 0;
    for (int i = 0; i < size; i++) {
      int low = 0;
      int high = length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (position[tails[middle]] < position[i]) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      previous[i] = low == 0 ? -1 : tails[low - 1];
      tails[low] = i;
      length = Math.max(length, low + 1);
    }
    Set<T> moved = new LinkedHashSet<>(after);
    for (int i = length == 0 ? -1 : tails[length - 1]; i >= 0; i = previous[i]) {
      moved.remove(after.get(i));
    }
    return moved;
  }

  /** Places of the things in the first list that the second has less often. */
  static <T> List<Integer> without(List<T> list, List<T> other) {
    Map<T, Integer> left = new HashMap<>();
    other.forEach(it -> left.merge(it, 1, Integer::sum));
    List<Integer> extra = new ArrayList<>();
    // Of equal things the later ones count as the extra ones.
    Map<T, Integer> seen = new HashMap<>();
    for (int i = 0; i < list.size(); i++) {
      if (seen.merge(list.get(i), 1, Integer::sum) > left.getOrDefault(list.get(i), 0)) {
        extra.add(i);
      }
    }
    return Collections.unmodifiableList(extra);
  }

  /** Whether what both lists have stands in the same order in both. */
  static <T> boolean sameOrder(List<T> before, List<T> after) {
    int common = after.size() - without(after, before).size();
    return longestCommon(before, after) == common;
  }

  private static <T> int longestCommon(List<T> one, List<T> two) {
    int[] row = new int[two.size() + 1];
    for (T left : one) {
      int[] next = new int[row.length];
      for (int j = 1; j < row.length; j++) {
        next[j] = left.equals(two.get(j - 1)) ? row[j - 1] + 1 : Math.max(row[j], next[j - 1]);
      }
      row = next;
    }
    return Arrays.stream(row).max().orElse(0);
  }
}
