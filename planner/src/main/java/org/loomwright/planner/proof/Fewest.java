package org.loomwright.planner.proof;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds the fewest trait values such that every possible build that has them lies in a given set,
 * and at least one does: a shortest prime implicant with impossible builds as don't-cares.
 *
 * <p>Iterative deepening: a good build that the values chosen so far still allow must be kept out
 * by one more value, which bounds the choice at every level. Sets seen before at the same depth are
 * not tried again. Greedy dropping of values gives the first bound.
 */
final class Fewest {
  /** Most partial choices looked at before the greedy answer is given. */
  private static final int MOST_TRIES = 200_000;

  /**
   * @param values value index by trait
   * @param shortest false when the search was cut short; then no value can be left out, but another
   *     choice might be shorter
   */
  record Cube(Map<String, Integer> values, boolean shortest) {
    Region region(Regions regions) {
      Region region = regions.all();
      for (Map.Entry<String, Integer> it : values.entrySet()) {
        region = region.and(regions.is(it.getKey(), valueId(regions, it.getKey(), it.getValue())));
      }
      return region;
    }
  }

  private record Tried(Region good, Region bad, int left) {}

  private final Regions regions;
  private final Set<Tried> failed = new HashSet<>();
  private int tries;

  private Fewest(Regions regions) {
    this.regions = regions;
  }

  /**
   * @param possible possible builds
   * @param bad the builds to be told; not empty
   */
  static Cube of(Region possible, Region bad) {
    Region inside = bad.and(possible);
    if (inside.isEmpty()) {
      throw new IllegalArgumentException("there is no possible build to be told");
    }
    Region good = possible.minus(bad);
    Fewest search = new Fewest(bad.in());
    Map<String, Integer> greedy = search.greedy(good, inside);
    for (int size = 0; size < greedy.size(); size++) {
      Optional<Map<String, Integer>> found = search.find(good, inside, size, new LinkedHashMap<>());
      if (search.tries > MOST_TRIES) {
        return new Cube(greedy, false);
      }
      if (found.isPresent()) {
        return new Cube(found.get(), true);
      }
    }
    return new Cube(greedy, true);
  }

  static String valueId(Regions regions, String trait, int value) {
    return regions.traits().stream()
        .filter(it -> it.id().equals(trait))
        .findFirst()
        .orElseThrow()
        .values()
        .get(value)
        .id();
  }

  private Map<String, Integer> greedy(Region good, Region bad) {
    Map<String, Integer> values = new LinkedHashMap<>();
    Region left = bad;
    // A value for every trait that tells good from bad; single builds can't be both.
    Set<String> telling = new TreeSet<>(good.support());
    telling.addAll(bad.support());
    for (String trait : telling) {
      int value = firstValue(left, trait);
      values.put(trait, value);
      left = left.restrict(trait, value);
    }
    for (String trait : telling) {
      Map<String, Integer> fewer = new LinkedHashMap<>(values);
      fewer.remove(trait);
      if (restrict(good, fewer).isEmpty()) {
        values = fewer;
      }
    }
    return values;
  }

  private int firstValue(Region region, String trait) {
    int value = 0;
    while (region.restrict(trait, value).isEmpty()) {
      value++;
    }
    return value;
  }

  private static Region restrict(Region region, Map<String, Integer> values) {
    Region left = region;
    for (Map.Entry<String, Integer> it : values.entrySet()) {
      left = left.restrict(it.getKey(), it.getValue());
    }
    return left;
  }

  private Optional<Map<String, Integer>> find(
      Region good, Region bad, int left, Map<String, Integer> chosen) {
    if (good.isEmpty()) {
      return Optional.of(new LinkedHashMap<>(chosen));
    }
    if (left == 0 || !failed.add(new Tried(good, bad, left)) || ++tries > MOST_TRIES) {
      return Optional.empty();
    }
    Map<String, Integer> build = regions.anyOf(good);
    for (String trait : good.support()) {
      // A trait the path of the build does not name may have any value; none keeps it out.
      Integer had = build.get(trait);
      if (had == null) {
        continue;
      }
      int values = values(trait);
      for (int value = 0; value < values; value++) {
        Region stillBad = bad.restrict(trait, value);
        if (value == had || stillBad.isEmpty()) {
          continue;
        }
        chosen.put(trait, value);
        Optional<Map<String, Integer>> found =
            find(good.restrict(trait, value), stillBad, left - 1, chosen);
        if (found.isPresent()) {
          return found;
        }
        chosen.remove(trait);
      }
    }
    return Optional.empty();
  }

  private int values(String trait) {
    return regions.traits().stream()
        .filter(it -> it.id().equals(trait))
        .findFirst()
        .orElseThrow()
        .values()
        .size();
  }
}
