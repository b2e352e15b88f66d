package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;

/** What stands against the sign-off of a job. */
final class Against {
  private Against() {}

  /** What stands against it, in words; empty when nothing does. */
  static List<String> of(JobWork work) {
    Job job = work.job();
    List<String> against = new ArrayList<>();
    if (job.state() != JobState.UNDER_WAY) {
      against.add("The work is " + job.state().words() + ", not under way.");
      return against;
    }
    kit(work, against);
    values(work, against);
    for (Deviation it : job.deviations()) {
      if (it.why().isEmpty()) {
        against.add(
            "What was otherwise is not settled"
                + work.step(it).map(step -> " (step " + step.number() + ")").orElse("")
                + ": "
                + it.was());
      }
    }
    return against;
  }

  /** Guide, kit, answers and ticks. */
  private static void kit(JobWork work, List<String> against) {
    if (work.isOfOtherGuide()) {
      against.add(
          "It was begun by another guide ("
              + work.job().guide().orElse("")
              + ") than this one ("
              + work.print()
              + ").");
    }
    if (work.job().release().isEmpty()) {
      against.add("It names no release of the kit; choose one on the job's own page.");
    }
    if (work.job().partNumber().isEmpty()) {
      against.add("No part number is written down.");
    }
    work.wrongNumber().ifPresent(it -> against.add("Part number " + it + "."));
    work.walk()
        .openQuestion()
        .ifPresent(it -> against.add("The question of step " + it.number() + " is open."));
    if (!work.walk().isServed()) {
      against.add("The kit is not made for a vehicle with these answers.");
    }
    JobWork.numbers(
            work.way().stream().filter(it -> !work.isDone(it) && !work.isTicked(it)).toList())
        .ifPresent(it -> against.add("Not done yet: " + it + "."));
    JobWork.numbers(work.astray())
        .ifPresent(
            it -> against.add("Done, but not called for by the answers: " + it + "; undo them."));
  }

  private static void values(JobWork work, List<String> against) {
    List<Value> open = work.values().stream().filter(work::isOpen).toList();
    List<Value> missing = open.stream().filter(it -> it.value().isBlank()).toList();
    JobWork.numbers(missing.stream().map(Value::step).distinct().toList())
        .ifPresent(
            it ->
                against.add(
                    "Not taken yet: "
                        + (missing.size() == 1 ? "a value at " : missing.size() + " values at ")
                        + it
                        + "."));
    for (Value it : open) {
      if (!missing.contains(it)) {
        against.add(
            it.title()
                + ": "
                + it.value()
                + (work.mustHold(it)
                    ? " lies outside; it has to be put right (step "
                    : it.standing() == Value.Standing.NO_BEFORE
                        ? " can't be compared, and no reason is given (step "
                        : " lies outside, and no reason is given (step ")
                + it.step().number()
                + ").");
      }
    }
  }
}
