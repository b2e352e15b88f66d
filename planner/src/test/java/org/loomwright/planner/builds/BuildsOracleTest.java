package org.loomwright.planner.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.assertj.core.data.Offset;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.fixture.VehicleBuilder;

/** Regions against sets of builds listed one by one. */
class BuildsOracleTest {
  @Property(tries = 120, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void regionsAreTheSetsTheConditionsDescribe(@ForAll long seed) {
    Drawn it = new Drawn(seed);
    Set<Map<String, String>> a = it.listed(it.first);
    Set<Map<String, String>> b = it.listed(it.second);
    Region first = it.builds.where(it.first);
    Region second = it.builds.where(it.second);

    assertThat(it.listed(it.builds.possible())).isEqualTo(it.all);
    assertThat(it.listed(it.builds.none())).isEmpty();
    assertThat(it.listed(first)).isEqualTo(a);
    assertThat(it.listed(first.and(second))).isEqualTo(only(a, b::contains));
    assertThat(it.listed(first.minus(second))).isEqualTo(only(a, build -> !b.contains(build)));
    Set<Map<String, String>> either = new HashSet<>(a);
    either.addAll(b);
    assertThat(it.listed(first.or(second))).isEqualTo(either);
    assertThat(first.count()).isEqualTo(BigInteger.valueOf(a.size()));
    assertThat(first.isEmpty()).isEqualTo(a.isEmpty());
    assertThat(first.within(second)).isEqualTo(b.containsAll(a));
    assertThat(first.meets(second)).isEqualTo(a.stream().anyMatch(b::contains));
    assertThat(first.equals(second)).isEqualTo(a.equals(b));
    if (!a.isEmpty()) {
      assertThat(a).contains(first.sample());
    }
    for (Trait trait : it.vehicle.traits()) {
      List<String> values =
          trait.values().stream()
              .map(TraitValue::id)
              .filter(value -> a.stream().anyMatch(build -> value.equals(build.get(trait.id()))))
              .toList();
      assertThat(first.values(trait.id())).isEqualTo(values);
    }
    it.count("not trivial", !a.isEmpty() && a.size() < it.all.size());
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void hidingTraitsJoinsBuildsThatDifferInThemOnly(@ForAll long seed) {
    Drawn it = new Drawn(seed);
    Set<Map<String, String>> inside = it.listed(it.first);
    Region region = it.builds.where(it.first);
    Set<String> hidden =
        it.vehicle.traits().stream()
            .map(Trait::id)
            .filter(id -> it.draw.chance(40))
            .collect(Collectors.toSet());

    Map<Map<String, String>, Set<Map<String, String>>> alike =
        it.all.stream().collect(Collectors.groupingBy(b -> rest(b, hidden), Collectors.toSet()));
    Set<Map<String, String>> blurred =
        only(it.all, b -> at(alike, rest(b, hidden)).stream().anyMatch(inside::contains));
    Set<Map<String, String>> certain =
        only(inside, b -> inside.containsAll(at(alike, rest(b, hidden))));
    assertThat(it.listed(region.blurred(hidden))).isEqualTo(blurred);
    assertThat(it.listed(region.certain(hidden))).isEqualTo(certain);
    it.count("hiding matters", blurred.size() > certain.size());
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void traitsAreThoseThatCannotBeHidden(@ForAll long seed) {
    Drawn it = new Drawn(seed);
    Set<Map<String, String>> inside = it.listed(it.first);
    Set<String> needed = it.builds.where(it.first).traits();
    assertThat(tellsApart(it.all, inside, needed)).isTrue();
    for (String one : needed) {
      Set<String> fewer = new HashSet<>(needed);
      fewer.remove(one);
      assertThat(tellsApart(it.all, inside, fewer)).as("without %s", one).isFalse();
    }
    it.count("two traits or more", needed.size() > 1);
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void shareIsTheWeightOfTheListedBuilds(@ForAll long seed) {
    Drawn it = new Drawn(seed);
    double whole = it.all.stream().mapToDouble(b -> weight(it.vehicle, b)).sum();
    double part = it.listed(it.first).stream().mapToDouble(b -> weight(it.vehicle, b)).sum();
    double share = it.builds.where(it.first).share();
    assertThat(share).isCloseTo(whole == 0 ? 0 : part / whole, Offset.offset(1e-9));
    it.count("not trivial", share > 0 && share < 1);
  }

  private static double weight(Vehicle vehicle, Map<String, String> build) {
    double weight = 1;
    for (Trait trait : vehicle.traits()) {
      for (TraitValue value : trait.values()) {
        if (value.id().equals(build.get(trait.id()))) {
          weight *= value.share().map(it -> it.fraction()).orElse(1.0 / trait.values().size());
        }
      }
    }
    return weight;
  }

  private static boolean tellsApart(
      Set<Map<String, String>> all, Set<Map<String, String>> inside, Set<String> traits) {
    Set<Map<String, String>> seen = new HashSet<>();
    inside.forEach(build -> seen.add(kept(build, traits)));
    return all.stream()
        .filter(build -> !inside.contains(build))
        .noneMatch(build -> seen.contains(kept(build, traits)));
  }

  private static Map<String, String> kept(Map<String, String> build, Set<String> traits) {
    Map<String, String> kept = new LinkedHashMap<>(build);
    kept.keySet().retainAll(traits);
    return kept;
  }

  private static Map<String, String> rest(Map<String, String> build, Set<String> hidden) {
    Map<String, String> rest = new LinkedHashMap<>(build);
    rest.keySet().removeAll(hidden);
    return rest;
  }

  private static Set<Map<String, String>> at(
      Map<Map<String, String>, Set<Map<String, String>>> alike, Map<String, String> key) {
    return alike.getOrDefault(key, Set.of());
  }

  private static Set<Map<String, String>> only(
      Set<Map<String, String>> of, Predicate<Map<String, String>> which) {
    return of.stream().filter(which).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** A vehicle of up to 2^10 builds with two conditions. */
  private static final class Drawn {
    private final Draw draw;
    private final Vehicle vehicle;
    private final Set<Map<String, String>> all;
    private final Builds builds;
    private final Map<Map<String, String>, Region> points;
    private final Condition first;
    private final Condition second;

    Drawn(long seed) {
      draw = new Draw(seed);
      VehicleBuilder builder = draw.traits(new VehicleBuilder(), draw.number(1, 10));
      vehicle = draw.rules(builder).build();
      all = AllBuilds.of(vehicle);
      builds = Builds.of(vehicle);
      points = AllBuilds.points(builds, all);
      first = draw.condition(vehicle.traits());
      second = draw.condition(vehicle.traits());
    }

    Set<Map<String, String>> listed(Condition condition) {
      return only(all, condition::holds);
    }

    Set<Map<String, String>> listed(Region region) {
      return AllBuilds.of(region, points);
    }

    void count(String label, boolean so) {
      Statistics.label(label)
          .collect(so)
          .coverage(coverage -> coverage.check(true).percentage(share -> share > 15));
    }
  }
}
