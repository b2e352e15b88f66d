package org.loomwright.web.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Shown;
import org.loomwright.model.design.Step;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.KitOrder;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a finding says that is made of something seen during a job. */
public final class JobFinding {
  private JobFinding() {}

  /**
   * The fields of the finding that are known.
   *
   * @param view the job
   * @param stepId id of the step it was seen at; empty for none
   * @param was what was otherwise; empty when it is still to be written
   */
  public static ObjectNode of(JobView view, String stepId, String was) {
    Job job = view.job();
    ObjectNode finding = JsonNodeFactory.instance.objectNode();
    finding.put("vehicle", job.vehicle());
    finding.put("vehicleNote", job.vehicleNote()).put("job", job.id()).put("kit", job.kit());
    finding.put("how", "seen").put("when", job.when()).put("by", job.by());
    if (!was.isEmpty()) {
      finding.put("seen", was);
    }
    Optional<Step> step = view.work().flatMap(it -> it.guide().step(stepId));
    step.ifPresent(it -> at(finding, view.work().orElseThrow(), it));
    if (!job.answers().isEmpty()) {
      ObjectNode traits = finding.putObject("traits");
      job.answers().forEach(traits::put);
    }
    List<JobView.Photo> photos = stepId.isEmpty() ? List.of() : view.photos(stepId);
    if (!photos.isEmpty()) {
      ArrayNode list = finding.putArray("photos");
      for (JobView.Photo it : photos) {
        ObjectNode photo = list.addObject().put("file", it.file());
        if (!it.shows().isEmpty()) {
          photo.put("shows", it.shows());
        }
      }
    }
    return finding;
  }

  private static void at(ObjectNode finding, JobWork work, Step step) {
    finding.put("name", step.title()).put("step", step.id());
    place(work.pages().order(), step).ifPresent(it -> finding.put("at", it.text()));
    Optional<Lead> lead = new StepView(work, step).lead();
    lead.ifPresent(it -> finding.put("lead", it.id()));
  }

  private static Optional<FoundAt> place(KitOrder order, Step step) {
    Optional<String> one =
        step.shown().filter(it -> it.cavities().size() == 1).map(it -> it.cavities().get(0));
    String owner = step.shown().map(Shown::owner).orElse("");
    if (order.vehicle().connector(owner).isPresent()) {
      return Optional.of(
          one.map(it -> new FoundAt(FoundAt.Sort.CAVITY, owner, one))
              .orElseGet(() -> FoundAt.connector(owner)));
    }
    if (order.vehicle().fuseBlock(owner).isPresent()) {
      return Optional.of(
          one.map(it -> new FoundAt(FoundAt.Sort.SLOT, owner, one))
              .orElseGet(() -> FoundAt.block(owner)));
    }
    return order.vehicle().place(step.place()).isPresent()
        ? Optional.of(new FoundAt(FoundAt.Sort.PLACE, step.place(), Optional.empty()))
        : Optional.empty();
  }
}
