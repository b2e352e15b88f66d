package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/**
 * A region in words and as a condition: few statements joined by "or", each a few trait values
 * joined by "and". Impossible builds are free, so "towing preparation" need not repeat what the
 * vehicle's rules already imply.
 *
 * <p>Only traits are spoken of that are needed to tell the builds from others; where the vehicle's
 * rules tie traits together, the first choice of such traits is taken, which another choice might
 * undercut by a word. Statements are prime: leaving out any trait would let builds in that do not
 * belong. Up to three traits per statement the choice of statements is the smallest found by an
 * exhaustive search within a bound; beyond it, builds not yet covered get a prime statement each.
 *
 * @param words the builds in words
 * @param when the builds as a condition
 */
public record Described(String words, Condition when) {
  private static final int MOST_TRAITS_TOGETHER = 3;
  private static final int MOST_TRAITS_SEARCHED = 12;
  private static final int MOST_SUBSETS = 5;

  /** Describes a region; "no build" and "never" for the empty one. */
  public static Described of(Region region) {
    return of(region, region.builds().possible(), List.of());
  }

  /**
   * Describes a region to somebody who knows that the vehicle is one of a larger region.
   *
   * @param care builds in question, the region among them
   * @param keep traits to speak of rather than others
   */
  public static Described of(Region region, Region care, List<String> keep) {
    Builds builds = region.builds();
    if (region.isEmpty()) {
      return new Described("no build", Condition.never());
    }
    List<Cube> cubes = cover(region, care, keep);
    Expr expr =
        cubes.size() == 1
            ? cubes.get(0).expr()
            : new Expr.Or(cubes.stream().map(Cube::expr).toList());
    String words =
        cubes.stream()
            .map(
                cube ->
                    cubes.size() > 1 && cube.allowed().size() > 1
                        ? "(" + cube.words(builds) + ")"
                        : cube.words(builds))
            .collect(Collectors.joining(", or "));
    return new Described(words, Condition.of(expr));
  }

  static List<Cube> cover(Region region, Region care, List<String> keep) {
    Builds builds = region.builds();
    Cube all = new Cube(new TreeMap<>());
    Region others = care.minus(region);
    if (others.isEmpty()) {
      return List.of(all);
    }
    List<String> traits = region.apartFrom(others, keep).stream().sorted().toList();
    List<Cube> primes =
        traits.size() <= MOST_TRAITS_SEARCHED ? primes(region, others, traits) : new ArrayList<>();
    Region open = region;
    for (Cube prime : primes) {
      open = open.minus(prime.region(builds));
    }
    while (!open.isEmpty()) {
      Cube prime = expand(others, open.sample(), traits);
      primes.add(prime);
      open = open.minus(prime.region(builds));
    }
    return new SmallestCover(region, primes).find();
  }

  /** All prime statements of up to three traits, smallest first. */
  private static List<Cube> primes(Region region, Region others, List<String> traits) {
    Builds builds = region.builds();
    List<Cube> found = new ArrayList<>();
    List<Cube> grow = List.of(new Cube(new TreeMap<>()));
    for (int size = 1; size <= Math.min(MOST_TRAITS_TOGETHER, traits.size()); size++) {
      List<Cube> next = new ArrayList<>();
      for (Cube cube : grow) {
        for (String trait : traits) {
          if (!cube.allowed().isEmpty() && trait.compareTo(cube.allowed().lastKey()) <= 0) {
            continue;
          }
          for (List<String> values : subsets(trait(builds, trait))) {
            Cube candidate = cube.with(trait, values);
            Region inside = candidate.region(builds);
            if (!inside.meets(region)) {
              continue;
            }
            if (!inside.meets(others)) {
              boolean covered =
                  found.stream()
                      .anyMatch(
                          smaller ->
                              smaller.size() <= candidate.size()
                                  && inside.and(region).within(smaller.region(builds)));
              if (!covered) {
                found.add(candidate);
              }
            } else {
              next.add(candidate);
            }
          }
        }
      }
      grow = next;
    }
    found.sort(Comparator.comparingInt(Cube::size).thenComparing(cube -> cube.expr().print()));
    return found;
  }

  // A build of the region, made as general as it can be without letting others in.
  private static Cube expand(Region others, Map<String, String> build, List<String> traits) {
    Cube cube = new Cube(new TreeMap<>());
    for (String trait : traits) {
      cube = cube.with(trait, List.of(String.valueOf(build.get(trait))));
    }
    for (String trait : traits) {
      Cube wider = cube.without(trait);
      if (!wider.region(others.builds()).meets(others)) {
        cube = wider;
      }
    }
    return cube;
  }

  private static Trait trait(Builds builds, String id) {
    Trait trait = builds.traits().get(id);
    if (trait == null) {
      throw new IllegalStateException("a region over an unknown trait " + id);
    }
    return trait;
  }

  // Proper subsets of the values; single values and their complements when there are many.
  private static List<List<String>> subsets(Trait trait) {
    List<String> ids = trait.values().stream().map(TraitValue::id).toList();
    List<List<String>> subsets = new ArrayList<>();
    if (ids.size() <= MOST_SUBSETS) {
      for (int mask = 1; mask < (1 << ids.size()) - 1; mask++) {
        List<String> subset = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
          if ((mask >> i & 1) == 1) {
            subset.add(ids.get(i));
          }
        }
        subsets.add(subset);
      }
    } else {
      for (String id : ids) {
        subsets.add(List.of(id));
        subsets.add(ids.stream().filter(other -> !other.equals(id)).toList());
      }
    }
    subsets.sort(Comparator.comparingInt(List::size));
    return subsets;
  }
}
