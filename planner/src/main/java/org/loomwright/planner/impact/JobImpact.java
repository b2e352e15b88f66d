package org.loomwright.planner.impact;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.proof.FailingBuilds;

/**
 * Whether a job is concerned when its release no longer holds on some builds.
 *
 * @param job the job
 * @param touch how surely it is concerned
 * @param words why, as a full sentence
 * @param todo what to do, as a full sentence; empty when it is not concerned
 */
public record JobImpact(Job job, Touch touch, String words, String todo) {
  /** How surely a job is concerned, the surest first. */
  public enum Touch {
    /** Every build that has its answers is concerned, or none has them any more. */
    SURELY,
    /** It depends on what was not looked at. */
    PERHAPS,
    /** No build that has its answers is concerned. */
    NOT
  }

  static List<JobImpact> of(List<Job> jobs, Optional<FailingBuilds> failing, Vehicle now) {
    return jobs.stream()
        .map(it -> of(it, failing, now))
        .sorted(Comparator.comparing(JobImpact::touch))
        .toList();
  }

  private static JobImpact of(Job job, Optional<FailingBuilds> failing, Vehicle now) {
    if (failing.isEmpty()) {
      return concerned(
          job, "Nothing can be shown of its release on the vehicle as it is known now.", "");
    }
    FailingBuilds.OneVehicle one = failing.get().vehicle(job.answers());
    if (!one.possible()) {
      return concerned(
          job,
          "Its answers fit no build of the vehicle as it is known now.",
          "Ask again what was found on it. ");
    }
    if (!one.some()) {
      return new JobImpact(
          job, Touch.NOT, "Its answers are those of a build that the release holds on.", "");
    }
    if (one.all()) {
      return concerned(job, "Its answers are those of a build that is concerned.", "");
    }
    List<String> names =
        one.deciding().stream()
            .map(
                id ->
                    now.traits().stream()
                        .filter(it -> it.id().equals(id))
                        .findFirst()
                        .map(Trait::name)
                        .orElse(id))
            .toList();
    return new JobImpact(
        job,
        Touch.PERHAPS,
        "It was not looked at: " + String.join(", ", names) + ".",
        "Find that out first. If it is concerned: " + lower(todo(job)));
  }

  private static JobImpact concerned(Job job, String words, String first) {
    return new JobImpact(job, Touch.SURELY, words, first + todo(job));
  }

  private static String todo(Job job) {
    return switch (job.state()) {
      case SURVEY -> "Plan it anew with the vehicle as it is known now before anything is fitted.";
      case UNDER_WAY -> "Stop the work, and go through the steps done with the counterexample.";
      case SIGNED_OFF, GIVEN_UP ->
          "Call the owner in, and look at what the counterexample names before the vehicle is used"
              + " further.";
    };
  }

  private static String lower(String sentence) {
    return sentence.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + sentence.substring(1);
  }

  /** Whether something has to be done. */
  public boolean isTouched() {
    return touch != Touch.NOT;
  }
}
