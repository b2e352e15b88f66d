package org.loomwright.planner.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.Walker;

/** The way that answers lead is the way of the build. */
class GuideWalkTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyBuildOfTheDemoGoesItsWay(String kit) {
    KitOrder order = Demo.order(kit);
    Plan plan = Demo.plan(kit);
    Set<Map<String, String>> all = AllBuilds.of(order.vehicle());
    assertThat(all).isNotEmpty();
    all.forEach(build -> goesItsWay(plan, order, build));
  }

  @Property(tries = 20, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void everyBuildOfARandomVehicleGoesItsWay(@ForAll long seed) {
    KitOrder order = EasyCar.of(seed);
    Set<Map<String, String>> all = AllBuilds.of(order.vehicle());
    if (!all.isEmpty()) {
      Plan plan = Planner.plan(order);
      all.forEach(build -> goesItsWay(plan, order, build));
    }
  }

  /** Answers only what the guide asks, one question after the other. */
  private static void goesItsWay(Plan plan, KitOrder order, Map<String, String> build) {
    boolean unserved = plan.unserved().stream().anyMatch(it -> it.when().holds(build));
    if (unserved) {
      GuideWalk walk = GuideWalk.of(plan, order.vehicle(), build);
      assertThat(walk.isServed()).isFalse();
      assertThat(walk.way()).isEmpty();
      assertThat(walk.unserved()).isNotEmpty();
      return;
    }
    List<Step> taken = Walker.walk(plan.guide(), build);
    Map<String, String> answers = new LinkedHashMap<>();
    GuideWalk walk = GuideWalk.of(plan, order.vehicle(), answers);
    List<Step> before = walk.way();
    while (walk.openQuestion().isPresent()) {
      Step question = walk.openQuestion().orElseThrow();
      assertThat(taken).as("asks what %s is not asked", build).contains(question);
      assertThat(walk.way()).endsWith(question);
      String trait = question.ask().orElseThrow().trait();
      String value = String.valueOf(build.get(trait));
      assertThat(walk.possible(trait)).contains(value);
      answers.put(trait, value);
      walk = GuideWalk.of(plan, order.vehicle(), answers);
      assertThat(walk.way().subList(0, before.size())).isEqualTo(before);
      before = walk.way();
    }
    assertThat(walk.way()).as("%s", build).isEqualTo(taken);
    assertThat(walk.stages()).allMatch(GuideWalk.Stage::certain);
    List<Case> own = plan.cases().stream().filter(it -> it.when().holds(build)).toList();
    assertThat(walk.decidedCases()).as("%s", build).isEqualTo(own);
    assertThat(walk.cases()).isEqualTo(own);
    List<String> ids = own.stream().map(Case::id).toList();
    assertThat(walk.fitting())
        .extracting(PartNumber::id)
        .containsExactlyElementsOf(
            plan.design().partNumbers().stream()
                .filter(it -> it.cases().containsAll(ids))
                .map(PartNumber::id)
                .toList());
  }

  @Test
  void answersAgainstTheRulesLeadNowhere() {
    KitOrder order = Demo.order(Demo.COMFORT);
    Plan plan = Demo.plan(Demo.COMFORT);
    Map<String, String> never = new LinkedHashMap<>();
    never.put("step-before", "left");
    never.put("tow-prep", "no");
    GuideWalk walk = GuideWalk.of(plan, order.vehicle(), never);
    boolean excluded =
        AllBuilds.of(order.vehicle()).stream()
            .noneMatch(
                it ->
                    never.entrySet().stream()
                        .allMatch(e -> e.getValue().equals(it.get(e.getKey()))));
    assertThat(walk.isPossible()).isEqualTo(!excluded);
    assertThat(walk.possible("tow-prep").contains("no")).isEqualTo(!excluded);
  }

  @Test
  void anOpenQuestionLeavesOpenOnlyWhatItDecides() {
    KitOrder order = Demo.order(Demo.COMFORT);
    Plan plan = Demo.plan(Demo.COMFORT);
    GuideWalk walk = GuideWalk.of(plan, order.vehicle(), Map.of("rear-feed", "no"));
    assertThat(walk.decidedCases()).extracting(Case::id).contains("A2").doesNotContain("A1", "B1");
    assertThat(walk.cases()).extracting(Case::id).contains("B1", "B2").doesNotContain("A1");
    assertThat(walk.stages())
        .filteredOn(it -> it.step().id().equals("lay/L1"))
        .as("lead L1 is not laid in case A2")
        .isEmpty();
    assertThat(walk.stages())
        .filteredOn(it -> it.step().id().equals("lay/L3"))
        .extracting(GuideWalk.Stage::certain)
        .containsExactly(false);
  }
}
