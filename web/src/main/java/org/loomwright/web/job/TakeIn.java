package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Step;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.hand.JobParts;
import org.loomwright.model.hand.Taking;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.Fault;
import org.loomwright.model.json.GuideRecordText;

/**
 * The record of a guide, held against a job: what it would change there, or why it can't be taken
 * in.
 *
 * @param text the record as it came
 * @param record what it says; empty when it can't be read
 * @param parts what a job takes from it; empty when there are problems
 * @param changes what it would change, in words
 * @param problems why it can't be taken in
 */
public record TakeIn(
    String text,
    Optional<GuideRecord> record,
    Optional<JobParts> parts,
    List<String> changes,
    List<String> problems) {
  public TakeIn {
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
  }

  /** A text that has not been held against a job yet. */
  public static TakeIn read(String text) {
    if (GuideRecordText.read(text) instanceof GuideRecordText.Good good) {
      return new TakeIn(text, Optional.of(good.record()), Optional.empty(), List.of(), List.of());
    }
    List<Fault> faults = ((GuideRecordText.Bad) GuideRecordText.read(text)).faults();
    return refused(text, words(faults));
  }

  /** One that can't be taken in. */
  public static TakeIn refused(String text, List<String> problems) {
    return new TakeIn(text, Optional.empty(), Optional.empty(), List.of(), problems);
  }

  /** Held against a job and the guide it follows. */
  public TakeIn on(JobWork work) {
    if (record.isEmpty()) {
      return this;
    }
    Taking taking = GuideRecordTaker.take(record.get(), work.pages().plan(), work.print());
    if (taking instanceof Taking.Bad bad) {
      return new TakeIn(text, record, Optional.empty(), List.of(), words(bad.faults()));
    }
    JobParts taken = ((Taking.Good) taking).parts();
    List<Fault> against = taken.against(work.job());
    return against.isEmpty()
        ? new TakeIn(
            text, record, Optional.of(taken), changes(work, taken.onto(work.job())), List.of())
        : new TakeIn(text, record, Optional.empty(), List.of(), words(against));
  }

  private static List<String> words(List<Fault> faults) {
    return faults.stream()
        .map(it -> it.path().isEmpty() ? it.message() : it.path() + ": " + it.message())
        .toList();
  }

  private static List<String> changes(JobWork work, Job after) {
    Job before = work.job();
    List<String> changes = new ArrayList<>();
    if (before.state() != after.state()) {
      changes.add("The job is then " + after.state().words() + ".");
    }
    plain("Part number", before.partNumber(), after.partNumber(), changes);
    plain("Serial number", before.serial(), after.serial(), changes);
    for (Map.Entry<String, String> it : after.answers().entrySet()) {
      String old = before.answers().getOrDefault(it.getKey(), "");
      if (!old.equals(it.getValue())) {
        changes.add(
            question(work, it.getKey())
                + ": "
                + answer(work, it.getKey(), it.getValue())
                + (old.isEmpty() ? "" : ", no longer " + answer(work, it.getKey(), old)));
      }
    }
    List<Step> done =
        after.done().stream()
            .filter(it -> !before.done().contains(it))
            .flatMap(it -> work.guide().step(it).stream())
            .toList();
    JobWork.numbers(done).ifPresent(it -> changes.add("Done: " + it + "."));
    for (Taken it : after.taken()) {
      Optional<Taken> old = before.taken(it.reading());
      if (!old.map(Taken::value).equals(Optional.of(it.value()))) {
        changes.add(
            it.name()
                + ": "
                + it.value()
                + it.wanted().map(words -> " (has to be " + words + ")").orElse("")
                + old.map(was -> ", no longer " + was.value()).orElse(""));
      }
    }
    for (Deviation it : after.deviations()) {
      if (!before.deviations().contains(it)) {
        changes.add(
            "Otherwise"
                + work.step(it).map(step -> " at step " + step.number()).orElse("")
                + ": "
                + it.was());
      }
    }
    return changes;
  }

  private static void plain(
      String what, Optional<String> before, Optional<String> after, List<String> changes) {
    if (!before.equals(after)) {
      changes.add(what + ": " + after.orElse("none"));
    }
  }

  private static Optional<Step> asking(JobWork work, String trait) {
    return work.guide().steps().stream()
        .filter(it -> it.ask().filter(ask -> ask.trait().equals(trait)).isPresent())
        .findFirst();
  }

  private static String question(JobWork work, String trait) {
    return asking(work, trait).map(Step::title).orElse(trait);
  }

  private static String answer(JobWork work, String trait, String value) {
    return asking(work, trait)
        .flatMap(Step::ask)
        .flatMap(ask -> ask.answers().stream().filter(it -> it.value().equals(value)).findFirst())
        .map(Answer::words)
        .orElse(value);
  }

  /** The text of a job with the record taken in. */
  public JobText onto(JobText job, Job before) {
    JobParts taken = parts.orElseThrow();
    Job after = taken.onto(before);
    job.parts(taken.answers(), taken.done(), taken.taken(), taken.deviations());
    job.state(after.state());
    job.with("partNumber", after.partNumber());
    job.with("serial", after.serial());
    return job.with("guide", after.guide());
  }
}
