package org.loomwright.planner.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.GuideEdits;
import org.loomwright.planner.plan.Walker;
import org.loomwright.planner.proof.ProofMaker;

/** The questions of the demo's guides: none too many, and in an order that pays. */
class QuestionsTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void noQuestionCanBeLeftOut(String kit) {
    Plan plan = Demo.plan(kit);
    List<Step> asks = asks(plan);
    assertThat(asks).hasSizeGreaterThanOrEqualTo(3);
    for (Step ask : asks) {
      Proof proof =
          ProofMaker.prove(
              Demo.order(kit),
              plan.cases(),
              plan.design(),
              GuideEdits.without(plan.guide(), ask.id()));
      assertThat(proof.proven()).as("without %s", ask.id()).isFalse();
      // The title ends with the name of what is asked for.
      String name = ask.title().substring(ask.title().indexOf(": ") + 2);
      assertThat(proof.counterexamples().toString())
          .contains("'" + name + "'")
          .contains("was not asked");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void noQuestionIsAskedWhoseAnswerIsNotUsed(String kit) {
    // What never differs between the cases is not asked at all.
    Plan plan = Demo.plan(kit);
    Set<String> used = new HashSet<>();
    plan.cases().forEach(one -> used.addAll(one.when().traits()));
    assertThat(asks(plan).stream().map(it -> it.ask().orElseThrow().trait())).isSubsetOf(used);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void askingPaysBetterThanAskingInTheOrderOfTheDocument(String kit) {
    Plan plan = Demo.plan(kit);
    KitOrder order = Demo.order(kit);
    Builds builds = Builds.of(order.vehicle());
    Set<Map<String, String>> all = AllBuilds.of(order.vehicle());
    Map<Map<String, String>, Region> points = AllBuilds.points(builds, all);
    double expected = 0;
    for (Map<String, String> build : all) {
      double share = points.getOrDefault(build, builds.none()).share();
      for (Step step : Walker.walk(plan.guide(), build)) {
        expected += step.kind() == StepKind.ASK ? share * step.minutes() : 0;
      }
    }
    // All traits that any case depends on, asked of every vehicle.
    double everything = asks(plan).stream().mapToDouble(Step::minutes).sum();
    assertThat(expected).isLessThanOrEqualTo(everything + 1e-9).isPositive();
    // The same traits in the order of the document, each asked only where the answers so far
    // leave it open.
    double document = 0;
    List<Trait> traits = traits(order, plan);
    Set<String> before = new HashSet<>();
    for (Trait trait : traits) {
      for (Map<String, String> build : all) {
        Set<String> open = new HashSet<>();
        all.stream()
            .filter(it -> before.stream().allMatch(id -> same(it, build, id)))
            .forEach(it -> open.add(it.getOrDefault(trait.id(), "")));
        document +=
            open.size() > 1
                ? points.getOrDefault(build, builds.none()).share()
                    * trait.tell().effort().seconds()
                    / 60
                : 0;
      }
      before.add(trait.id());
    }
    assertThat(expected).isLessThanOrEqualTo(document + 1e-9);
  }

  private static boolean same(Map<String, String> one, Map<String, String> other, String trait) {
    return one.getOrDefault(trait, "").equals(other.getOrDefault(trait, ""));
  }

  private static List<Trait> traits(KitOrder order, Plan plan) {
    Set<String> asked = new HashSet<>();
    asks(plan).forEach(ask -> asked.add(ask.ask().orElseThrow().trait()));
    return order.vehicle().traits().stream().filter(it -> asked.contains(it.id())).toList();
  }

  private static List<Step> asks(Plan plan) {
    return plan.guide().steps().stream()
        .filter(it -> it.kind() == StepKind.ASK)
        .sorted(Comparator.comparing(Step::number))
        .toList();
  }
}
