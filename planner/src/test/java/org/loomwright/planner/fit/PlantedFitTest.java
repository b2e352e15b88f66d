package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Diagram;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.With;

/** Faults planted into a kit never let the fit check promise too much, or refuse too much. */
class PlantedFitTest {
  private static final KitOrder ORDER = Demo.order(Demo.COMFORT);

  @Test
  void vansWithoutAWayAreToldApartFromOutside() {
    KitOrder order =
        Demo.copy()
            .item(
                Demo.VAN,
                "fuseBlocks",
                "seat-block",
                block -> Demo.remove(block.path("slots"), "id", List.of("S5")))
            .kit(Demo.COMFORT);
    Plan plan = Planner.plan(order);
    assertThat(plan.unserved()).isNotEmpty();
    FitCheck check = FitCheck.of(order, plan);
    FitOracle oracle = new FitOracle(order, plan, check);
    oracle.checkQuestions();
    oracle.checkNothingLost();
    DemoFitTest.combinations(check).forEach(oracle::check);
    assertThat(outcomes(check)).contains(Outcome.FITS, Outcome.OPEN);
    // Body and tow preparation tell what the meter would read: the maker always fits the feed.
    assertThat(check.answer(Map.of("body", "crew-ready", "tow-prep", "no")).wiring().outcome())
        .isEqualTo(Outcome.FITS);
    FitAnswer open = check.answer(Map.of("body", "panel", "tow-prep", "no", "step-before", "none"));
    assertThat(open.wiring().outcome()).isEqualTo(Outcome.OPEN);
    assertThat(open.wiring().deciding())
        .isEqualTo(new FitAnswer.Deciding(List.of(), List.of("rear-feed")));
    assertThat(open.wiring().reasons())
        .extracting(FitAnswer.Reason::outcome)
        .containsOnly(Outcome.OPEN);
  }

  @Test
  void anObligationNotShownPromisesNothing() {
    Plan plan = Demo.plan(Demo.COMFORT);
    List<Obligation> obligations = new ArrayList<>(plan.proof().obligations());
    for (int i = 0; i < obligations.size(); i++) {
      if (obligations.get(i).id().equals("needs-met")) {
        obligations.set(i, With.changed(obligations.get(i), "shown", false));
      }
    }
    Proof proof =
        With.changed(With.changed(plan.proof(), "proven", false), "obligations", obligations);
    promisesNothing(With.changed(plan, "proof", proof), "not proven");
    promisesNothing(
        With.changed(
            plan,
            "proof",
            With.changed(With.changed(proof, "obligations", List.of()), "proven", false)),
        "not proven");
  }

  @Test
  void aFailingCheckPromisesNothing() {
    Plan plan = Demo.plan(Demo.COMFORT);
    List<Check> checks = new ArrayList<>(plan.checks());
    checks.set(0, With.changed(checks.get(0), "verdict", Verdict.FAILS));
    promisesNothing(With.changed(plan, "checks", checks), "check");
  }

  @Test
  void aProofOfOtherInstructionsPromisesNothing() {
    Plan plan = Demo.plan(Demo.COMFORT);
    Guide shorter =
        With.changed(
            plan.guide(),
            "edges",
            plan.guide().edges().stream()
                .filter(it -> !it.to().equals(plan.guide().ends().get(0)))
                .toList());
    promisesNothing(With.changed(plan, "guide", shorter), "other instructions");
  }

  @Test
  void aGuideInACircleIsRefused() {
    Plan plan = Demo.plan(Demo.COMFORT);
    List<org.loomwright.model.design.Edge> edges = new ArrayList<>(plan.guide().edges());
    edges.add(With.changed(edges.get(0), "to", edges.get(0).from()));
    Guide circle = With.changed(plan.guide(), "edges", edges);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FitCheck.of(ORDER, With.changed(plan, "guide", circle)))
        .withMessageContaining("leads back to step");
  }

  @Test
  void anAnswerThatIsNoneIsRefused() {
    FitCheck check = FitCheck.of(ORDER, Demo.plan(Demo.COMFORT));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> check.answer(Map.of("body", "round")))
        .withMessageContaining("'round' is no answer to 'body'")
        .withMessageContaining("panel, glazed, crew-ready");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> check.answer(Map.of("rear-feed", "yes")))
        .withMessageContaining("no question 'rear-feed'");
  }

  @Test
  void theOracleNoticesAFaultInTheDiagram() {
    Plan plan = Demo.plan(Demo.TRAILER);
    KitOrder order = Demo.order(Demo.TRAILER);
    FitCheck check = FitCheck.of(order, plan);
    List<Left> ends = new ArrayList<>(check.numbers().whole().ends());
    java.util.Collections.swap(ends, 0, 1);
    Diagram<Left> wrong = With.changed(check.numbers().whole(), "ends", ends);
    FitCheck changed =
        With.changed(check, "numbers", With.changed(check.numbers(), "whole", wrong));
    FitOracle oracle = new FitOracle(order, plan, changed);
    assertThatThrownBy(() -> DemoFitTest.combinations(changed).forEach(oracle::check))
        .isInstanceOf(AssertionError.class);
  }

  private static void promisesNothing(Plan plan, String why) {
    FitCheck check = FitCheck.of(ORDER, plan);
    assertThat(check.wiring().held().orElseThrow()).contains(why);
    for (Map<String, String> answers : DemoFitTest.combinations(check)) {
      FitAnswer answer = check.answer(answers);
      assertThat(answer.wiring().outcome()).isEqualTo(Outcome.OPEN);
      assertThat(answer.wiring().deciding()).isEqualTo(FitAnswer.Deciding.NOTHING);
      assertThat(answer.number().possible()).isEmpty();
      assertThat(answer.work().minutes()).isEmpty();
    }
  }

  private static Set<Outcome> outcomes(FitCheck check) {
    return DemoFitTest.combinations(check).stream()
        .map(it -> check.answer(it).wiring().outcome())
        .collect(Collectors.toSet());
  }
}
