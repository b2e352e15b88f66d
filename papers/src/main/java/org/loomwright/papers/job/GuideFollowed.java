package org.loomwright.papers.job;

import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.job.Job;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.papers.page.Html;

/** Whether what is drawn of a job is drawn from the guide it was worked by. */
public final class GuideFollowed {
  private static final String OTHER = "Drawn from another guide than the one followed";

  private GuideFollowed() {}

  /**
   * What a reader of the job's papers has to know of where they come from.
   *
   * @param plan what they are drawn from
   * @return a full sentence; empty when it is the guide that was followed, or that of the job's
   *     release and none was followed yet
   */
  public static Optional<String> warning(Job job, Plan plan) {
    if (job.guide().isEmpty()) {
      return job.release().isPresent()
          ? Optional.empty()
          : Optional.of(
              "This job names neither a release nor a guide: drawn from the documents as they are"
                  + " today.");
    }
    String print = GuidePrint.of(plan);
    return job.guide()
        .filter(it -> !it.equals(print))
        .map(
            it ->
                OTHER
                    + ": fuses, wires and places may differ from what is in this vehicle. Followed"
                    + " was the guide "
                    + it
                    + ", this one is "
                    + print
                    + ".");
  }

  /** The same on top of a paper: a box for another guide, a line where none is named. */
  static void write(Fitted fitted, Html html) {
    warning(fitted.job(), fitted.plan())
        .ifPresent(
            it -> {
              if (it.startsWith(OTHER)) {
                html.open("div", "box grave").line("p", "title", it).close("div");
              } else {
                html.line("p", "note", it);
              }
            });
  }
}
