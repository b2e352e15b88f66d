package org.loomwright.planner.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.fixture.VehicleBuilder;

/** Descriptions against builds listed one by one. */
class DescribedOracleTest {
  @Property(tries = 250, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void conditionHoldsOnExactlyTheRegionAndIsPrime(@ForAll long seed) {
    Draw draw = new Draw(seed);
    Vehicle vehicle = draw.rules(draw.traits(new VehicleBuilder(), draw.number(1, 9))).build();
    Condition written = draw.condition(vehicle.traits());
    Described described = Described.of(Builds.of(vehicle).where(written));
    Set<Map<String, String>> all = AllBuilds.of(vehicle);

    for (Map<String, String> build : all) {
      assertThat(described.when().holds(build)).as("%s", build).isEqualTo(written.holds(build));
    }
    List<Expr> statements = statements(described.when());
    for (Expr statement : statements) {
      for (Expr without : leavingOutOne(statement)) {
        assertThat(all)
            .as("%s is not needed in full, %s would do", statement.print(), without.print())
            .anyMatch(build -> Condition.of(without).holds(build) && !written.holds(build));
      }
    }
    Statistics.label("two statements or more")
        .collect(statements.size() > 1)
        .coverage(c -> c.check(true).percentage(p -> p > 12));
    Statistics.label("two traits in a statement")
        .collect(statements.stream().anyMatch(it -> it instanceof Expr.And))
        .coverage(c -> c.check(true).percentage(p -> p > 8));
  }

  @Property(tries = 200, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void whatIsKnownAlreadyNeedNotBeSaid(@ForAll long seed) {
    Draw draw = new Draw(seed);
    Vehicle vehicle = draw.rules(draw.traits(new VehicleBuilder(), draw.number(2, 8))).build();
    Builds builds = Builds.of(vehicle);
    Condition known = draw.condition(vehicle.traits());
    Condition written = draw.condition(vehicle.traits());
    List<String> keep =
        vehicle.traits().stream().map(Trait::id).filter(id -> draw.chance(30)).toList();
    Region care = builds.where(known);
    Region region = care.and(builds.where(written));
    Described described = Described.of(region, care, keep);
    Set<Map<String, String>> all = AllBuilds.of(vehicle);
    for (Map<String, String> build : all) {
      if (known.holds(build)) {
        assertThat(described.when().holds(build)).as("%s", build).isEqualTo(written.holds(build));
      }
    }
    Statistics.label("others were possible but known not to be")
        .collect(
            !region.isEmpty()
                && all.stream().anyMatch(it -> described.when().holds(it) && !known.holds(it)))
        .coverage(c -> c.check(true).percentage(p -> p > 10));
  }

  @Property(tries = 250, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void wordsAreMadeOfValueWordsOnly(@ForAll long seed) {
    Draw draw = new Draw(seed);
    Vehicle vehicle = draw.rules(draw.traits(new VehicleBuilder(), draw.number(1, 8))).build();
    Described described = Described.of(Builds.of(vehicle).where(draw.condition(vehicle.traits())));
    String left = described.words();
    for (Trait trait : vehicle.traits()) {
      for (var value : trait.values()) {
        left = left.replace(value.words(), "");
      }
    }
    if (described.when().equals(Condition.never())) {
      assertThat(described.words()).isEqualTo("no build");
    } else if (described.when().equals(Condition.always())) {
      assertThat(described.words()).isEqualTo("every build");
    } else {
      assertThat(left.replaceAll("[(),]", " ").strip().split(" +"))
          .isSubsetOf("", "and", "or", "either");
      assertThat(left).isNotEqualTo(described.words());
    }
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void noSetOfStatementsThatIsShorterToReadSaysTheSame(@ForAll long seed) {
    Draw draw = new Draw(seed);
    VehicleBuilder builder = new VehicleBuilder().trait("a", "x", "y");
    builder.trait("b", draw.chance(50) ? new String[] {"x", "y"} : new String[] {"x", "y", "z"});
    builder.trait("c", draw.chance(70) ? new String[] {"x", "y"} : new String[] {"x", "y", "z"});
    Vehicle vehicle = draw.rules(builder).build();
    Condition written = scattered(draw, AllBuilds.of(vehicle));
    List<Map<String, String>> all = List.copyOf(AllBuilds.of(vehicle));
    Region builds = Builds.of(vehicle).where(written);
    Described described = Described.of(builds);
    if (described.when().equals(Condition.never())) {
      return;
    }
    int region = mask(all, written);
    // Where rules tie traits together, builds can be told by different traits; one choice is made.
    Set<String> spoken = builds.traits();
    List<Expr> primes =
        primes(vehicle, all, region).stream()
            .filter(it -> spoken.containsAll(it.traits()))
            .toList();
    List<Expr> found = statements(described.when());
    assertThat(found.stream().mapToInt(DescribedOracleTest::effort).sum())
        .as("%s", described.when())
        .isEqualTo(cheapest(all, primes, region));
    Statistics.label("two statements or more")
        .collect(found.size() > 1)
        .coverage(c -> c.check(true).percentage(p -> p > 20));
  }

  @Example
  void rulesNeedNotBeRepeated() {
    Vehicle vehicle =
        new VehicleBuilder()
            .trait("tow", "yes", "no")
            .trait("feed", "yes", "no")
            .exclude(Condition.of("tow = yes and feed = no"))
            .build();
    Builds builds = Builds.of(vehicle);
    assertThat(Described.of(builds.where(Condition.of("tow = yes and feed = yes"))).when())
        .isEqualTo(Condition.of("tow = yes"));
  }

  // About half of the builds, without any pattern.
  private static Condition scattered(Draw draw, Set<Map<String, String>> all) {
    Condition condition = Condition.never();
    for (Map<String, String> build : all) {
      if (draw.chance(55)) {
        condition =
            condition.or(
                Condition.of(
                    build.entrySet().stream()
                        .map(it -> it.getKey() + " = " + it.getValue())
                        .collect(Collectors.joining(" and "))));
      }
    }
    return condition;
  }

  private static List<Expr> statements(Condition when) {
    return when.expr() instanceof Expr.Or or ? or.parts() : List.of(when.expr());
  }

  private static List<Expr> leavingOutOne(Expr statement) {
    if (statement instanceof Expr.And and) {
      List<Expr> shorter = new ArrayList<>();
      for (Expr part : and.parts()) {
        List<Expr> rest = and.parts().stream().filter(it -> it != part).toList();
        shorter.add(rest.size() == 1 ? rest.get(0) : new Expr.And(rest));
      }
      return shorter;
    }
    return statement instanceof Expr.Is || statement instanceof Expr.In
        ? List.of(new Expr.Always())
        : List.of();
  }

  // One for the statement and one for each value named.
  private static int effort(Expr statement) {
    List<Expr> parts = statement instanceof Expr.And and ? and.parts() : List.of(statement);
    int effort = 1;
    for (Expr part : parts) {
      effort += part instanceof Expr.In in ? in.values().size() : part instanceof Expr.Is ? 1 : 0;
    }
    return effort;
  }

  // Every statement that stays within the region and would not if a trait were left out.
  private static List<Expr> primes(Vehicle vehicle, List<Map<String, String>> all, int region) {
    List<List<Expr>> statements = new ArrayList<>(List.of(List.of()));
    for (Trait trait : vehicle.traits()) {
      List<String> ids = trait.values().stream().map(it -> it.id()).toList();
      List<List<Expr>> more = new ArrayList<>(statements);
      for (List<Expr> statement : statements) {
        for (int some = 1; some < (1 << ids.size()) - 1; some++) {
          int chosen = some;
          List<String> values =
              ids.stream().filter(id -> (chosen >> ids.indexOf(id) & 1) == 1).toList();
          List<Expr> longer = new ArrayList<>(statement);
          longer.add(
              values.size() == 1
                  ? new Expr.Is(trait.id(), values.get(0))
                  : new Expr.In(trait.id(), values));
          more.add(longer);
        }
      }
      statements = more;
    }
    return statements.stream()
        .map(
            parts ->
                parts.isEmpty()
                    ? new Expr.Always()
                    : parts.size() == 1 ? parts.get(0) : new Expr.And(parts))
        .filter(it -> within(all, it, region))
        .filter(it -> leavingOutOne(it).stream().noneMatch(less -> within(all, less, region)))
        .toList();
  }

  private static boolean within(List<Map<String, String>> all, Expr statement, int region) {
    int mask = mask(all, Condition.of(statement));
    return mask != 0 && (mask & ~region) == 0;
  }

  private static int mask(List<Map<String, String>> all, Condition condition) {
    int mask = 0;
    for (int i = 0; i < all.size(); i++) {
      if (condition.holds(all.get(i))) {
        mask |= 1 << i;
      }
    }
    return mask;
  }

  // Least effort over every set of primes that covers the region.
  private static int cheapest(List<Map<String, String>> all, List<Expr> primes, int region) {
    // Only builds of the region count, so that a set of them is a short row of bits.
    List<Map<String, String>> inside = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if ((region >> i & 1) == 1) {
        inside.add(all.get(i));
      }
    }
    int[] best = new int[1 << inside.size()];
    Arrays.fill(best, Integer.MAX_VALUE / 2);
    best[0] = 0;
    int[] masks = primes.stream().mapToInt(it -> mask(inside, Condition.of(it))).toArray();
    // Adding a statement only ever turns bits on, so ascending order meets every set once.
    for (int covered = 0; covered < best.length; covered++) {
      for (int i = 0; i < masks.length; i++) {
        int next = covered | masks[i];
        int cost = best[covered] + effort(primes.get(i));
        if (next != covered && cost < best[next]) {
          best[next] = cost;
        }
      }
    }
    return best[best.length - 1];
  }
}
