package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;

/** "Verified on" never says more than is true. */
class FittedTest {
  private static Job job(
      String note, JobState state, Optional<Integer> release, Optional<String> guide) {
    return new Job(
        note + state + release + guide,
        "a job",
        "1",
        "kit",
        release,
        "van",
        note,
        Optional.empty(),
        "2026-02-03",
        "T. Halvard",
        state,
        Optional.of("K-1"),
        Optional.empty(),
        guide,
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static int fitted(Optional<Integer> release, String print, Job... jobs) {
    Workspace none = Workspace.empty();
    Workspace workspace =
        new Workspace(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new ArrayList<>(List.of(jobs)),
            List.of(),
            none.pictures());
    assertThat(workspace.fitted("another", release, print)).isZero();
    return workspace.fitted("kit", release, print);
  }

  @Test
  void vehiclesOfTheReleaseOrTheSameGuideCountOnce() {
    Job[] jobs = {
      job("OST 417", JobState.SIGNED_OFF, Optional.of(1), Optional.of("aa")),
      // The same vehicle again, another release with the same guide.
      job("ost417", JobState.SIGNED_OFF, Optional.of(2), Optional.of("aa")),
      job("OST 418", JobState.SIGNED_OFF, Optional.of(2), Optional.of("aa")),
      job("OST 419", JobState.SIGNED_OFF, Optional.of(3), Optional.of("bb")),
      job("OST 420", JobState.SIGNED_OFF, Optional.of(1), Optional.empty()),
      job("OST 421", JobState.UNDER_WAY, Optional.of(1), Optional.of("aa")),
      job("OST 422", JobState.SIGNED_OFF, Optional.empty(), Optional.empty()),
    };
    assertThat(fitted(Optional.of(1), "aa", jobs)).isEqualTo(3);
    assertThat(fitted(Optional.empty(), "aa", jobs)).isEqualTo(2);
    assertThat(fitted(Optional.of(3), "bb", jobs)).isEqualTo(1);
    assertThat(fitted(Optional.empty(), "cc", jobs)).isZero();
  }

  @Test
  void vehiclesWithoutANoteAreNotTakenForOne() {
    assertThat(
            fitted(
                Optional.empty(),
                "aa",
                job("", JobState.SIGNED_OFF, Optional.of(1), Optional.of("aa")),
                job(" ", JobState.SIGNED_OFF, Optional.of(1), Optional.of("aa"))))
        .isEqualTo(2);
  }
}
