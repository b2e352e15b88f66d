package org.loomwright.planner.impact;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.impact.JobImpact.Touch;
import org.loomwright.planner.proof.FailingBuilds;

/** Says of the jobs of one release whether they are concerned. May be shared between threads. */
sealed interface JobJudge {
  /** Whether a job is concerned. */
  JobImpact of(Job job);

  /** Of a release that can't be judged. */
  record Blind() implements JobJudge {
    @Override
    public JobImpact of(Job job) {
      return isUntouched(job, Set.of())
          ? untouched(job)
          : new JobImpact(job, Touch.PERHAPS, "Its release can't be judged.", todoBlind(job));
    }

    private static String todoBlind(Job job) {
      String look = "Look through the papers of its release for what was found.";
      return switch (job.state()) {
        case SURVEY -> todo(job);
        case UNDER_WAY -> "Stop the work. " + look;
        case SIGNED_OFF, GIVEN_UP -> look;
      };
    }
  }

  /**
   * Of a release that was proven again.
   *
   * @param failing builds on which it does not hold; absent when nothing is shown of any
   * @param now the vehicle as known now
   * @param idle ids of the steps of its guide that fit nothing
   */
  record Seeing(Optional<FailingBuilds> failing, Vehicle now, Set<String> idle)
      implements JobJudge {
    public Seeing {
      idle = Set.copyOf(idle);
    }

    /** Of a release with this guide. */
    static Seeing of(Optional<FailingBuilds> failing, Vehicle now, Guide guide) {
      return new Seeing(
          failing,
          now,
          guide.steps().stream()
              .filter(it -> it.act().filter(Seeing::fits).isEmpty())
              .map(Step::id)
              .collect(Collectors.toSet()));
    }

    /** Whether something of the vehicle is otherwise after it. */
    private static boolean fits(Act act) {
      return !(act instanceof Act.Isolate
          || act instanceof Act.Reconnect
          || act instanceof Act.Open
          || act instanceof Act.Close);
    }

    @Override
    public JobImpact of(Job job) {
      if (isUntouched(job, idle)) {
        return untouched(job);
      }
      if (failing.isEmpty()) {
        return concerned(
            job, "Nothing can be shown of its release on the vehicle as it is known now.", "");
      }
      FailingBuilds.OneVehicle one;
      // Asking builds is not safe for several threads at once.
      synchronized (failing.get()) {
        one = failing.get().vehicle(job.answers());
      }
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
      List<String> names = one.deciding().stream().map(this::name).toList();
      return new JobImpact(
          job,
          Touch.PERHAPS,
          "It was not looked at: " + String.join(", ", names) + ".",
          "Find that out first. If it is concerned: " + lower(todo(job)));
    }

    private String name(String trait) {
      return now.traits().stream()
          .filter(it -> it.id().equals(trait))
          .findFirst()
          .map(Trait::name)
          .orElse(trait);
    }
  }

  /** Whether it was given up before anything was fitted. */
  private static boolean isUntouched(Job job, Set<String> idle) {
    return job.state() == JobState.GIVEN_UP && idle.containsAll(job.done());
  }

  private static JobImpact untouched(Job job) {
    return new JobImpact(
        job, Touch.NOT, "It was given up before anything was fitted; nothing has to be done.", "");
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
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }
}
