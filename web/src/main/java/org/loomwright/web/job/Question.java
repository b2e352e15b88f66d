package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.job.JobState;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.planner.walk.GuideWalk;

/**
 * A question of the guide as a job comes to it.
 *
 * @param work the job and its guide
 * @param step the step that asks
 * @param ask what it asks
 */
public record Question(JobWork work, Step step, Ask ask) {

  /** The question of a step; empty when it asks none. */
  public static Optional<Question> of(JobWork work, Step step) {
    return step.ask().map(it -> new Question(work, step, it));
  }

  /** Whether a number picks the answer. */
  public boolean isMeasured() {
    return ask.answers().stream().allMatch(it -> it.band().isPresent());
  }

  /** Bands of its answers. */
  public List<Band> bands() {
    return ask.answers().stream().flatMap(it -> it.band().stream()).toList();
  }

  /** Units the bands are in. */
  public List<String> units() {
    return bands().stream().map(Band::unit).distinct().toList();
  }

  /** The answer that was given; empty when none was. */
  public String given() {
    return work.job().answers().getOrDefault(ask.trait(), "");
  }

  /** The answer with a value. */
  public Optional<Answer> answer(String value) {
    return ask.answers().stream().filter(it -> it.value().equals(value)).findFirst();
  }

  /** The answer in whose band a number lies. */
  public Optional<Answer> answer(MeterNumber number) {
    return ask.answers().stream()
        .filter(
            it ->
                it.band()
                    .flatMap(band -> number.in(band.unit()).filter(in -> band.holds(in.value())))
                    .isPresent())
        .findFirst();
  }

  /**
   * Cautions that have to be read before it is answered: those the guide puts before it that were
   * neither ticked nor read at a question answered before. What the owner tells puts nobody at
   * risk.
   */
  public List<Step> cautions() {
    if (isTold(step)) {
      return List.of();
    }
    List<Step> stages = work.walk().stages().stream().map(GuideWalk.Stage::step).toList();
    List<Step> cautions = new ArrayList<>();
    for (int i = stages.indexOf(step) - 1; i >= 0; i--) {
      Step it = stages.get(i);
      if (it.ask().isPresent() && !isTold(it) && work.walk().isAnswered(it)) {
        break;
      }
      if (it.kind() == StepKind.CAUTION && !work.isTicked(it)) {
        cautions.add(it);
      }
    }
    Collections.reverse(cautions);
    return List.copyOf(cautions);
  }

  private static boolean isTold(Step step) {
    return step.ask().filter(it -> it.how() == TellHow.ASK_OWNER).isPresent();
  }

  /** Ids of those cautions, as the form sends them when they were read. */
  public String read() {
    return String.join(" ", cautions().stream().map(Step::id).toList());
  }

  /**
   * Whether power has to be on or off, where the steps ticked do not say that it is so; empty where
   * they do, or it does not matter.
   */
  public Optional<Boolean> power() {
    boolean known = work.job().state() == JobState.UNDER_WAY;
    return step.live().filter(on -> !known || on == work.isPowerOff());
  }

  /** What a person says of the power before the answer is taken. */
  public String powerWords() {
    return step.live().orElse(true)
        ? "The battery is connected and power is on."
        : "The battery is isolated. "
            + work.guide().steps().stream()
                .filter(it -> it.act().filter(Act.Isolate.class::isInstance).isPresent())
                .map(Step::text)
                .findFirst()
                .orElse("");
  }

  /** Whether anything has to be read or seen to before it is answered. */
  public boolean hasFirst() {
    return !cautions().isEmpty() || power().isPresent();
  }
}
