package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.planner.fixture.AllBuilds;

/** What the demo kits are there to show, looked at build by build. */
class DemoFactsTest {
  @Test
  void theVanHasManyBuildsFewCasesAndAKitThatFitsThemAll() {
    Plan plan = Demo.plan(Demo.COMFORT);
    Set<Map<String, String>> all = AllBuilds.of(Demo.order(Demo.COMFORT).vehicle());
    assertThat(all).hasSize(200);
    assertThat(plan.builds().possible()).isEqualTo(BigInteger.valueOf(200));
    assertThat(plan.builds().traits()).isGreaterThanOrEqualTo(6);
    assertThat(plan.cases()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(plan.unserved()).isEmpty();
    assertThat(plan.releasable()).isTrue();
    assertThat(plan.design().leads())
        .anyMatch(lead -> lead.a().isChangeable() || lead.b().isChangeable())
        .anyMatch(lead -> lead.a().isParkedSomewhere() && lead.b().isParkedSomewhere());
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theProofCoversAndNamesEveryBuild(String kit) {
    Plan plan = Demo.plan(kit);
    int all = AllBuilds.of(Demo.order(kit).vehicle()).size();
    Proof proof = plan.proof();
    assertThat(proof.proven()).isTrue();
    assertThat(proof.counterexamples()).isEmpty();
    assertThat(proof.builds()).isEqualTo(BigInteger.valueOf(all));
    assertThat(proof.obligations())
        .hasSize(9)
        .allSatisfy(
            it -> {
              assertThat(it.shown()).isTrue();
              assertThat(it.detail()).contains("over " + all + " builds");
            });
    assertThat(proof.leaves().stream().map(it -> it.builds()).reduce(BigInteger::add))
        .contains(BigInteger.valueOf(all));
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyBuildHasOneCaseOfEachLetterAndWaysThatAreOpenThere(String kit) {
    Plan plan = Demo.plan(kit);
    Map<String, WayLine> ways = ways(plan);
    for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
      List<Case> own = cases(plan, build);
      assertThat(own.stream().map(Case::component))
          .containsExactlyElementsOf(
              plan.cases().stream().map(Case::component).distinct().toList());
      for (Case one : own) {
        for (String id : one.ways().values()) {
          WayLine way = Objects.requireNonNull(ways.get(id), id);
          assertThat(way.forbidden()).isEmpty();
          assertThat(way.when().holds(build)).as("%s on %s", id, build).isTrue();
          assertThat(way.cases()).contains(one.id());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void whatCannotBeTakenBackComesAfterTheAnswersItReliesOn(String kit) {
    Plan plan = Demo.plan(kit);
    Map<String, WayLine> ways = ways(plan);
    Set<Map<String, String>> all = AllBuilds.of(Demo.order(kit).vehicle());
    int looked = 0;
    for (Map<String, String> build : all) {
      Map<String, String> answers = new HashMap<>();
      boolean live = true;
      for (Step step : Walker.walk(plan.guide(), build)) {
        step.ask().ifPresent(ask -> answers.put(ask.trait(), value(build, ask.trait())));
        live =
            !(step.act().orElse(null) instanceof Act.Isolate)
                && (live || step.act().orElse(null) instanceof Act.Reconnect);
        if (step.kind() != StepKind.ACT || !step.undo().isHard()) {
          continue;
        }
        assertThat(live).as("power at %s", step.id()).isFalse();
        List<Map<String, String>> same =
            all.stream().filter(it -> it.entrySet().containsAll(answers.entrySet())).toList();
        for (String need : step.relies()) {
          WayLine way = Objects.requireNonNull(ways.get(way(plan, need, build)), need);
          assertThat(same)
              .as("builds that %s can't tell apart from %s after %s", step.id(), build, answers)
              .allMatch(it -> way.when().holds(it));
          looked++;
        }
        if (step.id().equals("land/L1a/rear-block/F7")) {
          // The terminal can't be pulled out again, so whether the section is fed is read first.
          assertThat(answers).containsEntry("rear-feed", "yes");
        }
      }
    }
    assertThat(looked).isGreaterThan(100);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theSameOrderGivesTheSamePlan(String kit) {
    assertThat(Planner.plan(Demo.order(kit))).isEqualTo(Demo.plan(kit));
  }

  @Test
  void theOrderOfTheMountsDoesNotMatterToTheProof() {
    KitOrder order = Demo.order(Demo.COMFORT);
    List<Mount> mounts = new ArrayList<>(order.kit().mounts());
    Collections.reverse(mounts);
    Plan plan =
        Planner.plan(With.changed(order, "kit", With.changed(order.kit(), "mounts", mounts)));
    assertThat(plan.proof().proven()).isTrue();
    assertThat(plan.releasable()).isTrue();
    assertThat(plan.design().leads()).hasSameSizeAs(Demo.plan(Demo.COMFORT).design().leads());
    assertThat(cost(plan)).isEqualTo(cost(Demo.plan(Demo.COMFORT)));
  }

  private static double cost(Plan plan) {
    return plan.design().partNumbers().stream()
        .mapToDouble(it -> it.material().doubleValue() + it.labour().doubleValue())
        .sum();
  }

  private static Map<String, WayLine> ways(Plan plan) {
    Map<String, WayLine> ways = new HashMap<>();
    plan.ways().forEach(way -> ways.put(way.id(), way));
    return ways;
  }

  private static List<Case> cases(Plan plan, Map<String, String> build) {
    return plan.cases().stream().filter(it -> it.when().holds(build)).toList();
  }

  private static String way(Plan plan, String need, Map<String, String> build) {
    return cases(plan, build).stream()
        .filter(it -> it.ways().containsKey(need))
        .map(it -> it.ways().getOrDefault(need, ""))
        .findFirst()
        .orElseThrow();
  }

  private static String value(Map<String, String> build, String trait) {
    return build.getOrDefault(trait, "");
  }
}
