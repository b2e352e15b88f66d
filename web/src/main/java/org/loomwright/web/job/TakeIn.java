package org.loomwright.web.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.hand.JobParts;
import org.loomwright.model.hand.JobParts.Counts;
import org.loomwright.model.hand.Taking;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.VehicleNote;
import org.loomwright.model.json.Fault;
import org.loomwright.model.json.GuideRecordText;

/**
 * The record of a guide, held against a job: what it would change there, or why it can't be taken
 * in.
 *
 * @param text the record as it came
 * @param record what it says; empty when it can't be read
 * @param parts what a job takes from it; empty when there are problems
 * @param changes what it would change where the record counts, in words
 * @param adds what it would change where the job counts, in words
 * @param behind whether the job is ahead of the record, which may be an older one
 * @param otherVehicle what tells that it may be of another vehicle; empty for nothing
 * @param problems why it can't be taken in
 */
public record TakeIn(
    String text,
    Optional<GuideRecord> record,
    Optional<JobParts> parts,
    List<String> changes,
    List<String> adds,
    boolean behind,
    String otherVehicle,
    List<String> problems) {
  public TakeIn {
    changes = List.copyOf(changes);
    adds = List.copyOf(adds);
    problems = List.copyOf(problems);
  }

  /** Whether somebody has to say which counts, the record or the job. */
  public boolean isChoice() {
    return !changes.equals(adds);
  }

  /** A text that has not been held against a job yet. */
  public static TakeIn read(String text) {
    GuideRecordText.Result read = GuideRecordText.read(text);
    return read instanceof GuideRecordText.Good good
        ? bare(text, Optional.of(good.record()), List.of())
        : refused(text, words(((GuideRecordText.Bad) read).faults()));
  }

  /** One that can't be taken in. */
  public static TakeIn refused(String text, List<String> problems) {
    return bare(text, Optional.empty(), problems);
  }

  private static TakeIn bare(String text, Optional<GuideRecord> record, List<String> problems) {
    return new TakeIn(text, record, Optional.empty(), List.of(), List.of(), false, "", problems);
  }

  /** Held against a job and the guide it follows. */
  public TakeIn on(JobWork work) {
    if (record.isEmpty()) {
      return this;
    }
    Taking taking = GuideRecordTaker.take(record.get(), work.pages().plan(), work.print());
    if (taking instanceof Taking.Bad bad) {
      return bare(text, record, words(bad.faults()));
    }
    JobParts taken = ((Taking.Good) taking).parts();
    Job job = work.job();
    List<Fault> against = taken.against(job);
    if (!against.isEmpty()) {
      return bare(text, record, words(against));
    }
    return new TakeIn(
        text,
        record,
        Optional.of(taken),
        TakeInWords.changes(work, taken.onto(job, Counts.RECORD)),
        TakeInWords.changes(work, taken.onto(job, Counts.JOB)),
        taken.isBehind(job),
        otherVehicle(record.get(), job),
        List.of());
  }

  private static String otherVehicle(GuideRecord record, Job job) {
    return record
        .vehicleNote()
        .filter(it -> !VehicleNote.key(it).equals(VehicleNote.key(job.vehicleNote())))
        .map(it -> "The record is of " + it + ", this job of " + job.vehicleNote() + ".")
        .orElse("");
  }

  private static List<String> words(List<Fault> faults) {
    return faults.stream()
        .map(it -> it.path().isEmpty() ? it.message() : it.path() + ": " + it.message())
        .toList();
  }

  /** The text of a job with the record taken in. */
  public JobText onto(JobText job, Counts counts) {
    return job.become(parts.orElseThrow().onto(job.job(), counts));
  }
}
