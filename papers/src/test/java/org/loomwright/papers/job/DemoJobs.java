package org.loomwright.papers.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.calculation.DemoKits;
import org.loomwright.papers.words.Names;

/** The jobs of the demo, with the plans of their kits. */
final class DemoJobs {
  static final String SIGNED = "van-0417";
  static final String UNDER_WAY = "van-0288-trailer";
  static final String SURVEY = "van-0533";

  private static final Workspace DEMO = read();

  private DemoJobs() {}

  private static Workspace read() {
    // Tests run in the folder of their module.
    if (WorkspaceReader.read(Path.of("..", "demo")) instanceof Read.Good good) {
      return good.workspace();
    }
    throw new IllegalStateException("the demo can't be read");
  }

  static List<Job> all() {
    return DEMO.jobs();
  }

  static Job job(String id) {
    return DEMO.jobs().stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
  }

  static Pictures pictures() {
    return DEMO.pictures();
  }

  static Names plan(Job job) {
    return DemoKits.planned(job.kit());
  }

  static Fitted fitted(Job job) {
    return new Fitted(job, plan(job).order(), plan(job).plan());
  }

  /** The same job with other answers and nothing else said of it. */
  static Job with(Job job, Map<String, String> answers, List<Deviation> deviations) {
    return like(job, answers, List.of(), deviations, Optional.empty(), Optional.empty());
  }

  /** The same job, given up, with other answers than those by which it was done. */
  static Job changed(Job job, Map<String, String> answers) {
    return like(job, answers, job.done(), List.of(), Optional.empty(), Optional.empty());
  }

  /** The same job, worked by a guide and perhaps a release. */
  static Job by(Job job, Optional<String> guide, Optional<Integer> release) {
    return like(job, job.answers(), job.done(), List.of(), guide, release);
  }

  private static Job like(
      Job job,
      Map<String, String> answers,
      List<String> done,
      List<Deviation> deviations,
      Optional<String> guide,
      Optional<Integer> release) {
    return new Job(
        job.id(),
        job.name(),
        job.revision(),
        job.kit(),
        release,
        job.vehicle(),
        job.vehicleNote(),
        Optional.empty(),
        job.when(),
        job.by(),
        JobState.GIVEN_UP,
        Optional.empty(),
        Optional.empty(),
        guide,
        answers,
        done,
        List.of(),
        deviations,
        List.of(),
        Optional.empty());
  }
}
