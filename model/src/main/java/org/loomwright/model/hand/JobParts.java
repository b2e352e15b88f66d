package org.loomwright.model.hand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.Fault;

/**
 * What a job takes from a record.
 *
 * @param record the record
 * @param answers trait to value
 * @param done ids of the steps done, in printed order
 * @param taken values taken, those of measured questions included
 * @param deviations what did not look as the guide says; the reason is still to be given
 * @param worked whether something on the vehicle was changed
 */
public record JobParts(
    GuideRecord record,
    Map<String, String> answers,
    List<String> done,
    List<Taken> taken,
    List<Deviation> deviations,
    boolean worked) {
  public JobParts {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    done = List.copyOf(done);
    taken = List.copyOf(taken);
    deviations = List.copyOf(deviations);
  }

  /** Why a job can't take it in; empty when it can. */
  public List<Fault> against(Job job) {
    List<Fault> faults = new ArrayList<>();
    if (job.isOver()) {
      faults.add(
          new Fault(
              "",
              job.id(),
              "job '" + job.id() + "' is " + job.state().words() + "; nothing is added to it"));
    }
    differs("kit", record.kit(), Optional.of(job.kit()), faults);
    differs("vehicle", record.vehicle(), Optional.of(job.vehicle()), faults);
    record
        .release()
        .ifPresent(it -> differs("release", "" + it, job.release().map(String::valueOf), faults));
    // Before work begins a job may change to another guide; done steps and values mean only theirs.
    if (job.state() != JobState.SURVEY) {
      differs("guide", record.guide(), job.guide(), faults);
    }
    record.serial().ifPresent(it -> differs("serial", it, job.serial(), faults));
    record.partNumber().ifPresent(it -> differs("partNumber", it, job.partNumber(), faults));
    return faults;
  }

  private static void differs(String key, String here, Optional<String> there, List<Fault> faults) {
    there
        .filter(it -> !it.equals(here))
        .ifPresent(
            it ->
                faults.add(
                    new Fault(
                        key,
                        here,
                        "the record says '"
                            + here
                            + "', the job '"
                            + it
                            + "'; take it in on the job it belongs to, or put the job right"
                            + " first")));
  }

  /** Which of the two counts where a job and a record of the same work differ. */
  public enum Counts {
    /** The record: what it says replaces what the job says, what it lacks is taken out. */
    RECORD,
    /** The job: only what it lacks is added. */
    JOB
  }

  /** Whether the job is ahead: it has all steps of the record done, and more. */
  public boolean isBehind(Job job) {
    return job.done().size() > done.size() && Set.copyOf(job.done()).containsAll(done);
  }

  /**
   * The job with it taken in. What only the shop knows stays in any case: photos, and notes that
   * are settled, made a finding, or at no step.
   */
  public Job onto(Job job, Counts counts) {
    boolean newer = counts == Counts.RECORD;
    Map<String, String> allAnswers = new LinkedHashMap<>(job.answers());
    Set<String> allDone = new LinkedHashSet<>(job.done());
    Map<String, Taken> allTaken = new LinkedHashMap<>();
    job.taken().forEach(it -> allTaken.put(it.reading(), it));
    List<Deviation> allDeviations = new ArrayList<>(job.deviations());
    if (newer) {
      allAnswers.keySet().retainAll(answers.keySet());
      allDone.retainAll(done);
      allTaken.keySet().retainAll(taken.stream().map(Taken::reading).toList());
      allDeviations.removeIf(it -> isOfTheHand(it) && deviations.stream().noneMatch(same(it)));
    }
    answers.forEach((trait, value) -> put(allAnswers, trait, value, newer));
    allDone.addAll(done);
    taken.forEach(it -> put(allTaken, it.reading(), it, newer));
    deviations.stream()
        .filter(it -> job.deviations().stream().noneMatch(same(it)))
        .forEach(allDeviations::add);
    return new Job(
        job.id(),
        job.name(),
        job.revision(),
        job.kit(),
        job.release().or(record::release),
        job.vehicle(),
        job.vehicleNote(),
        job.owner(),
        job.when(),
        job.by(),
        worked && job.state() == JobState.SURVEY ? JobState.UNDER_WAY : job.state(),
        job.partNumber().or(record::partNumber),
        job.serial().or(record::serial),
        Optional.of(record.guide()),
        allAnswers,
        List.copyOf(allDone),
        List.copyOf(allTaken.values()),
        allDeviations,
        job.photos(),
        job.signOff());
  }

  private static <T> void put(Map<String, T> all, String key, T value, boolean newer) {
    if (newer) {
      all.put(key, value);
    } else {
      all.putIfAbsent(key, value);
    }
  }

  /** Whether a note is one that a guide in the hand may have taken back. */
  private static boolean isOfTheHand(Deviation it) {
    boolean noted = it.step().isPresent() || it.was().equals(GuideRecordTaker.STOPPED);
    return noted && it.why().isEmpty() && it.finding().isEmpty();
  }

  private static Predicate<Deviation> same(Deviation as) {
    return it -> it.step().equals(as.step()) && it.was().equals(as.was());
  }
}
