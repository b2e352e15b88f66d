package org.loomwright.model.hand;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;

/**
 * Writes down a job as the guide in the hand would, so that the fitter can go on there. What only
 * the shop knows stays out: the owner, reasons of deviations, photos.
 */
public final class GuideRecordMaker {
  private final Job job;
  private final Plan plan;
  private final Guide guide;

  private GuideRecordMaker(Job job, Plan plan) {
    this.job = job;
    this.plan = plan;
    this.guide = plan.guide();
  }

  /**
   * The record of a job.
   *
   * @param plan plan of the kit
   * @param print fingerprint of its guide
   * @param cases cases the answers decide
   * @param begun when the work was begun
   * @param ended when it ended; of no use while the job goes on
   */
  public static GuideRecord of(
      Job job, Plan plan, String print, List<String> cases, Instant begun, Instant ended) {
    return new GuideRecordMaker(job, plan).make(print, cases, begun, ended);
  }

  private GuideRecord make(String print, List<String> cases, Instant begun, Instant ended) {
    Map<String, String> taken = new LinkedHashMap<>();
    Map<String, String> measured = new LinkedHashMap<>();
    for (Taken it : job.taken()) {
      if (it.reading().startsWith(GuideRecordTaker.MEASURED)) {
        String trait = it.reading().substring(GuideRecordTaker.MEASURED.length());
        measured.put(trait, number(it.value()));
      } else {
        reading(it.reading()).ifPresent(reading -> taken.put(it.reading(), typed(it, reading)));
      }
    }
    return new GuideRecord(
        job.kit(),
        plan.kit().revision(),
        job.release(),
        job.vehicle(),
        print,
        Optional.of(job.vehicleNote()),
        job.serial(),
        job.partNumber(),
        Optional.of(job.by()),
        begun,
        job.isOver() ? Optional.of(ended) : Optional.empty(),
        state(),
        cases,
        job.answers(),
        taken,
        measured,
        job.done().stream()
            .flatMap(it -> guide.step(it).stream())
            .map(Step::number)
            .sorted()
            .toList(),
        odd());
  }

  private GuideRecord.State state() {
    return switch (job.state()) {
      case SURVEY, UNDER_WAY -> GuideRecord.State.UNDER_WAY;
      case SIGNED_OFF -> GuideRecord.State.FINISHED;
      case GIVEN_UP -> GuideRecord.State.STOPPED;
    };
  }

  private Optional<Reading> reading(String id) {
    return guide.steps().stream()
        .flatMap(it -> it.readings().stream())
        .filter(it -> it.id().equals(id))
        .findFirst();
  }

  private String typed(Taken taken, Reading reading) {
    return reading.kind() == ReadingKind.NUMBER
        ? MeterNumber.kept(taken.value())
            .flatMap(it -> it.takenIn(reading.unit().orElse("")))
            .map(MeterNumber::digits)
            .orElse(taken.value())
        : taken.value();
  }

  /** A value without its unit. */
  private static String number(String value) {
    int space = value.indexOf(' ');
    return space < 0 ? value : value.substring(0, space);
  }

  private List<GuideRecord.Odd> odd() {
    return job.deviations().stream()
        .flatMap(
            it ->
                it.step().flatMap(guide::step).stream()
                    .map(step -> new GuideRecord.Odd(step.number(), it.was())))
        .toList();
  }
}
