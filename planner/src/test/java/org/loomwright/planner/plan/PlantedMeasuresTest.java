package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.proof.ProofMaker;

/** Cautions and measurements taken out of the demo's guide, or spoilt, are missed by the proof. */
class PlantedMeasuresTest {
  private final KitOrder order = Demo.order(Demo.COMFORT);
  private final Plan plan = Demo.plan(Demo.COMFORT);

  @Test
  void everyCautionIsMissed() {
    int cautions = 0;
    for (Step step : plan.guide().steps()) {
      if (step.kind() == StepKind.CAUTION) {
        cautions++;
        Counterexample found = complete(GuideEdits.without(plan.guide(), step.id()));
        assertThat(found.what())
            .isEqualTo(
                "step '"
                    + step.id().replaceFirst("/\\d+$", "")
                    + "' does not come before this one");
      }
    }
    assertThat(cautions).isGreaterThan(15);
  }

  @Test
  void aCautionThatSaysNothingIsNone() {
    for (String id :
        List.of(
            "caution/battery",
            "caution/restraint",
            "caution/underneath",
            "caution/chafing",
            "caution/heat",
            "caution/fuses")) {
      Step step = plan.guide().step(id).orElseThrow();
      Guide guide = GuideEdits.withStep(plan.guide(), With.changed(step, "text", "Take care."));
      assertThat(complete(guide).what()).startsWith("step '" + id + "' says nothing of ");
    }
  }

  @Test
  void everyMeasurementUnderLoadAndEveryTrialIsMissed() {
    int readings = 0;
    for (Step step : plan.guide().steps()) {
      for (Reading reading : step.readings()) {
        if (reading.id().matches("(drop-feed|drop-ground|voltage|works)[-/].*")) {
          readings++;
          List<Reading> rest = new ArrayList<>(step.readings());
          rest.remove(reading);
          assertThat(complete(with(step, rest)).what())
              .contains("'" + reading.id().replaceFirst("(/\\d)/2$", "$1") + "'");
        }
      }
    }
    assertThat(readings).isGreaterThan(15);
  }

  @Test
  void aBandWiderThanItsLimitIsMissed() {
    Step step = plan.guide().step("measure/drop").orElseThrow();
    for (Reading reading : step.readings()) {
      Band band = reading.band().orElseThrow();
      Band wider =
          new Band(band.low().map(it -> it - 0.1), band.high().map(it -> it + 0.1), band.unit());
      assertThat(
              complete(with(step, swap(step, reading, With.changed(reading, "band", some(wider)))))
                  .what())
          .contains(reading.id().replaceFirst("(/\\d)/2$", "$1"));
    }
  }

  @Test
  void aMeasurementNobodyCanTellToTakeIsNotDecided() {
    Step step = plan.guide().step("measure/drop").orElseThrow();
    Reading reading = step.readings().get(0);
    Reading open = With.changed(reading, "when", Condition.of("cool-box = yes"));
    Counterexample found = found(with(step, swap(step, reading, open)), "decided");
    assertThat(found.what())
        .isEqualTo(
            "whether to take '"
                + reading.id()
                + "' can't be known here: 'cool box' was not asked before");
    Reading wrong = With.changed(reading, "when", Condition.of("moon = full"));
    assertThat(found(with(step, swap(step, reading, wrong)), "decided").what())
        .contains("can't be read")
        .contains("moon");
  }

  @Test
  void aMeasurementOnSomeBuildsOnlyIsMissedOnTheOthers() {
    Step step = plan.guide().step("measure/drop").orElseThrow();
    Reading reading = step.readings().get(0);
    Reading some = With.changed(reading, "when", Condition.of("rear-feed = yes"));
    Counterexample found = complete(with(step, swap(step, reading, some)));
    assertThat(found.what()).contains(reading.id());
    assertThat(found.words()).isEqualTo("with section B of the rear fuse block dead");
  }

  @Test
  void whatIsMeasuredBeforePowerOrBeforeTheLastLandingDoesNotCount() {
    Guide early = GuideEdits.moved(plan.guide(), List.of("measure/drop"), "act/reconnect");
    assertThat(found(early, "order").step()).contains("measure/drop");
    Guide first = GuideEdits.moved(plan.guide(), List.of("measure/drop"), "act/isolate");
    assertThat(complete(first).what()).contains("nobody measures");
  }

  @Test
  void aValueIsNotTakenTwiceNorComparedWithNothing() {
    Step step = plan.guide().step("measure/function").orElseThrow();
    List<Reading> twice = new ArrayList<>(step.readings());
    twice.add(plan.guide().step("measure/rest").orElseThrow().readings().get(0));
    assertThat(complete(with(step, twice)).what()).isEqualTo("'rest-voltage' was taken before");
    Step rest = plan.guide().step("measure/rest").orElseThrow();
    assertThat(complete(with(rest, rest.readings().subList(0, 1))).what())
        .isEqualTo("'key-off-after' is compared with 'key-off-before', which was not taken");
  }

  /** No wish and no rule takes a caution away: they are not even looked at. */
  @Test
  void cautionsStandWhateverIsWished() {
    List<String> before = cautions(plan);
    Demo wished =
        Demo.copy()
            .edit(
                "crew-comfort.kit.json",
                kit ->
                    kit.putArray("wishes")
                        .addObject()
                        .put("wish", "forbid")
                        .put("way", "caution/restraint")
                        .put("reason", "none of that"));
    assertThat(before).isEqualTo(cautions(Planner.plan(wished.kit(Demo.COMFORT))));
  }

  private static List<String> cautions(Plan plan) {
    return plan.guide().steps().stream()
        .filter(it -> it.kind() == StepKind.CAUTION)
        .map(Step::id)
        .toList();
  }

  private Guide with(Step step, List<Reading> readings) {
    return GuideEdits.withStep(plan.guide(), With.changed(step, "readings", readings));
  }

  private static List<Reading> swap(Step step, Reading old, Reading by) {
    return step.readings().stream().map(it -> it.equals(old) ? by : it).toList();
  }

  private static Optional<Band> some(Band band) {
    return Optional.of(band);
  }

  private Counterexample complete(Guide guide) {
    return found(guide, "complete");
  }

  private Counterexample found(Guide guide, String obligation) {
    Proof proof = ProofMaker.prove(order, plan.cases(), plan.design(), guide);
    assertThat(proof.proven()).isFalse();
    return proof.counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation))
        .findFirst()
        .orElseThrow(() -> new AssertionError("shown: " + obligation + " " + proof));
  }
}
