package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.With;

/**
 * The builds on which the demo's kit fails after a random fact of its van turned out to be
 * otherwise, against lists of builds and against proofs of fewer builds.
 */
class FailingBuildsTest {
  private static final List<String> CIRCUITS =
      List.of(
          "heater-feed",
          "floor-ground-wire",
          "step-feed-left",
          "step-ground-right",
          "outlet-feed",
          "cool-box-feed");
  private static final List<String> SLOTS = List.of("F1", "F2", "F3", "F5", "F7", "F9", "F10");
  private static final List<String> SECTIONS = List.of("A", "B", "C");

  private static int no;
  private static int some;

  /** The van with one fact changed, and the kit as it was designed for the van before. */
  private record Trial(Vehicle vehicle, List<Map<String, String>> possible) {
    static Trial of(Random random) {
      Demo demo = Demo.copy();
      List<Trait> traits = Demo.order(Demo.COMFORT).vehicle().traits();
      String when = literal(traits, random) + (random.nextBoolean() ? " and " : " or ");
      when += literal(traits, random);
      String condition = random.nextInt(8) == 0 ? "never" : when;
      switch (random.nextInt(3)) {
        case 0 ->
            demo.item(
                Demo.VAN,
                "circuits",
                any(CIRCUITS, random),
                it -> it.put("presentWhen", condition));
        case 1 ->
            demo.item(
                Demo.VAN,
                "fuseBlocks",
                "rear-block",
                it ->
                    Demo.find(it.path("slots"), "id", any(SLOTS, random))
                        .put("metalWhen", condition));
        default ->
            demo.item(
                Demo.VAN,
                "fuseBlocks",
                "rear-block",
                it ->
                    Demo.find(it.path("sections"), "id", any(SECTIONS, random))
                        .put("fedWhen", condition));
      }
      Vehicle vehicle = demo.kit(Demo.COMFORT).vehicle();
      return new Trial(vehicle, List.copyOf(AllBuilds.of(vehicle)));
    }

    private static String literal(List<Trait> traits, Random random) {
      List<Trait> known = traits.stream().filter(it -> !it.id().contains("/")).toList();
      Trait trait = known.get(random.nextInt(known.size()));
      List<TraitValue> values = trait.values();
      return trait.id()
          + (random.nextBoolean() ? " = " : " != ")
          + values.get(random.nextInt(values.size())).id();
    }

    private static String any(List<String> ids, Random random) {
      return ids.get(random.nextInt(ids.size()));
    }

    Judged judge() {
      return FailingBuildsTest.judge(vehicle);
    }
  }

  @Property(tries = 20)
  void withoutThemTheProofHoldsAndWithAnyOfThemItFails(@ForAll long seed) {
    Random random = new Random(seed);
    Trial trial = Trial.of(random);
    List<Map<String, String>> possible = trial.possible();
    Judged judged = trial.judge();
    FailingBuilds failing = judged.failing().orElseThrow();
    List<Map<String, String>> bad =
        possible.stream().filter(it -> failing.vehicle(it).some()).toList();
    List<Map<String, String>> good = new ArrayList<>(possible);
    good.removeAll(bad);
    assertThat(failing.count()).as("seed %d", seed).isEqualTo(BigInteger.valueOf(bad.size()));
    assertThat(failing.possibleCount()).isEqualTo(BigInteger.valueOf(possible.size()));
    assertThat(failing.isEmpty()).isEqualTo(judged.proof().proven()).isEqualTo(bad.isEmpty());
    assertThat(failing.isAll()).isEqualTo(good.isEmpty());
    if (bad.isEmpty()) {
      no++;
      assertThat(failing.words()).isEqualTo("no build");
      return;
    }
    if (good.isEmpty()) {
      return;
    }
    some++;
    // Builds are left out by rules here, and a rule never stands in for a reading: an act that
    // can't be undone has to rest on one even where a rule implies it.
    assertThat(judge(without(trial.vehicle(), bad)).proof().counterexamples())
        .as("seed %d", seed)
        .allMatch(it -> it.what().contains("which a meter tells and nobody measured before"));
    List<Map<String, String>> others = new ArrayList<>(bad);
    others.remove(random.nextInt(others.size()));
    assertThat(judge(without(trial.vehicle(), others)).proof().proven())
        .as("seed %d", seed)
        .isFalse();
  }

  @Property(tries = 40)
  void whatIsKnownOfOneVehicleAgreesWithLists(@ForAll long seed) {
    Random random = new Random(seed);
    Trial trial = Trial.of(random);
    List<Map<String, String>> possible = trial.possible();
    FailingBuilds failing = trial.judge().failing().orElseThrow();
    Map<String, String> answers = new TreeMap<>(possible.get(random.nextInt(possible.size())));
    answers.keySet().removeIf(it -> random.nextBoolean());
    List<Map<String, String>> fitting =
        possible.stream().filter(it -> it.entrySet().containsAll(answers.entrySet())).toList();
    List<Map<String, String>> bad =
        fitting.stream().filter(it -> failing.vehicle(it).some()).toList();
    answers.put("a trait of another vehicle", "yes");
    FailingBuilds.OneVehicle one = failing.vehicle(answers);
    assertThat(one.possible()).as("seed %d", seed).isEqualTo(!fitting.isEmpty());
    assertThat(one.some()).isEqualTo(!bad.isEmpty());
    assertThat(one.all()).isEqualTo(!bad.isEmpty() && bad.size() == fitting.size());
    assertThat(one.deciding().isEmpty()).isEqualTo(one.all() || !one.some());
    assertThat(one.deciding()).doesNotContainAnyElementsOf(answers.keySet());
    // Knowing the deciding traits as well settles it, and without any one of them some are open.
    assertThat(settles(one.deciding(), fitting, bad)).isTrue();
    for (String left : one.deciding()) {
      List<String> fewer = new ArrayList<>(one.deciding());
      fewer.remove(left);
      assertThat(settles(fewer, fitting, bad)).as("seed %d, without %s", seed, left).isFalse();
    }
  }

  private static boolean settles(
      List<String> traits, List<Map<String, String>> fitting, List<Map<String, String>> bad) {
    Map<Map<String, String>, Boolean> seen = new HashMap<>();
    for (Map<String, String> build : fitting) {
      Map<String, String> key = new TreeMap<>(build);
      key.keySet().retainAll(traits);
      boolean is = bad.contains(build);
      if (Optional.ofNullable(seen.putIfAbsent(key, is)).filter(it -> it != is).isPresent()) {
        return false;
      }
    }
    return true;
  }

  @AfterContainer
  static void bothOccur() {
    assertThat(some).isGreaterThan(2);
    assertThat(no).isGreaterThan(2);
  }

  private static Judged judge(Vehicle vehicle) {
    KitOrder was = Demo.order(Demo.COMFORT);
    Plan plan = Demo.plan(Demo.COMFORT);
    return ProofMaker.judge(
        new KitOrder(was.kit(), vehicle, was.equipment(), was.parts(), was.rules()),
        plan.cases(),
        plan.design(),
        plan.guide(),
        () -> {});
  }

  private static Vehicle without(Vehicle it, List<Map<String, String>> builds) {
    List<Exclusion> rules = new ArrayList<>(it.rules());
    for (Map<String, String> build : builds) {
      List<Expr> values = new ArrayList<>();
      build.forEach((trait, value) -> values.add(new Expr.Is(trait, value)));
      Expr all = values.size() == 1 ? values.get(0) : new Expr.And(values);
      rules.add(new Exclusion(Condition.of(all), "left out", Optional.empty()));
    }
    return With.changed(it, "rules", rules);
  }
}
