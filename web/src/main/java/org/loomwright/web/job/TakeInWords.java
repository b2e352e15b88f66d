package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;

/** What a record changes in a job, in words. */
final class TakeInWords {
  private final JobWork work;
  private final Job before;
  private final Job after;
  private final List<String> changes = new ArrayList<>();

  private TakeInWords(JobWork work, Job after) {
    this.work = work;
    this.before = work.job();
    this.after = after;
  }

  /** One line for each thing that differs; what is taken out comes last. */
  static List<String> changes(JobWork work, Job after) {
    TakeInWords words = new TakeInWords(work, after);
    words.plain();
    words.added();
    words.takenOut();
    return words.changes;
  }

  private void plain() {
    if (before.state() != after.state()) {
      changes.add("The job is then " + after.state().words() + ".");
    }
    plain("Release", before.release().map(String::valueOf), after.release().map(String::valueOf));
    plain("Part number", before.partNumber(), after.partNumber());
    plain("Serial number", before.serial(), after.serial());
  }

  private void plain(String what, Optional<String> was, Optional<String> is) {
    if (!was.equals(is)) {
      changes.add(what + ": " + is.orElse("none"));
    }
  }

  private void added() {
    for (Map.Entry<String, String> it : after.answers().entrySet()) {
      String old = before.answers().getOrDefault(it.getKey(), "");
      if (!old.equals(it.getValue())) {
        changes.add(
            question(it.getKey())
                + ": "
                + answer(it.getKey(), it.getValue())
                + (old.isEmpty() ? "" : ", no longer " + answer(it.getKey(), old)));
      }
    }
    numbers(after.done(), before.done()).ifPresent(it -> changes.add("Done: " + it + "."));
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
    after.deviations().stream()
        .filter(it -> !before.deviations().contains(it))
        .forEach(it -> changes.add("Otherwise" + noted(it)));
  }

  private void takenOut() {
    before
        .answers()
        .forEach(
            (trait, value) -> {
              if (!after.answers().containsKey(trait)) {
                changes.add("Taken out: " + question(trait) + ": " + answer(trait, value));
              }
            });
    numbers(before.done(), after.done())
        .ifPresent(it -> changes.add("No longer done: " + it + "."));
    before.taken().stream()
        .filter(it -> after.taken(it.reading()).isEmpty())
        .forEach(it -> changes.add("Taken out: " + it.name() + ": " + it.value()));
    before.deviations().stream()
        .filter(it -> !after.deviations().contains(it))
        .forEach(it -> changes.add("Taken out: otherwise" + noted(it)));
  }

  /** The printed numbers of steps that are in one list and not in another. */
  private Optional<String> numbers(List<String> in, List<String> notIn) {
    return JobWork.numbers(
        work.guide().steps().stream()
            .filter(it -> in.contains(it.id()) && !notIn.contains(it.id()))
            .toList());
  }

  private String noted(Deviation it) {
    return work.step(it).map(step -> " at step " + step.number()).orElse("") + ": " + it.was();
  }

  private Optional<Step> asking(String trait) {
    return work.guide().steps().stream()
        .filter(it -> it.ask().filter(ask -> ask.trait().equals(trait)).isPresent())
        .findFirst();
  }

  private String question(String trait) {
    return asking(trait).map(Step::title).orElse(trait);
  }

  private String answer(String trait, String value) {
    return asking(trait)
        .flatMap(Step::ask)
        .flatMap(ask -> ask.answers().stream().filter(it -> it.value().equals(value)).findFirst())
        .map(Answer::words)
        .orElse(value);
  }
}
