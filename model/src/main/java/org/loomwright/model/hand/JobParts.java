package org.loomwright.model.hand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  /** The job with it taken in. What the record says counts; what it is silent about stays. */
  public Job onto(Job job) {
    Map<String, String> allAnswers = new LinkedHashMap<>(job.answers());
    allAnswers.putAll(answers);
    Set<String> allDone = new LinkedHashSet<>(job.done());
    allDone.addAll(done);
    Map<String, Taken> allTaken = new LinkedHashMap<>();
    job.taken().forEach(it -> allTaken.put(it.reading(), it));
    taken.forEach(it -> allTaken.put(it.reading(), it));
    List<Deviation> allDeviations = new ArrayList<>(job.deviations());
    deviations.stream().filter(it -> isNew(it, job)).forEach(allDeviations::add);
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

  private static boolean isNew(Deviation deviation, Job job) {
    return job.deviations().stream()
        .noneMatch(it -> it.step().equals(deviation.step()) && it.was().equals(deviation.was()));
  }
}
