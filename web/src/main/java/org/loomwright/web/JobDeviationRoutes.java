package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.StepView;
import org.loomwright.web.job.Value;
import org.loomwright.web.shop.Href;

/** What was otherwise than the guide says, and why it may stay so. */
final class JobDeviationRoutes implements Routes {
  private static final String WAS = "was";
  private static final String WHY = "why";

  /** Form fields: id of a reading whose value stays open, and the reason. */
  private static final String READING = "reading";

  private static final String REASON = "reason";

  private final JobAccess jobs;

  JobDeviationRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (jobs.hasStore()) {
      routes.post("/job/{id}/otherwise", this::otherwise);
      routes.post("/job/{id}/reason", this::reason);
      routes.post("/job/{id}/settle", this::settle);
    }
  }

  /** Notes what is otherwise at a step, with or without the reason why it may stay so. */
  private void otherwise(Context ctx) {
    Optional<JobStepRoutes.At> found = JobStepRoutes.at(jobs, ctx);
    if (found.isEmpty()) {
      return;
    }
    JobStepRoutes.At at = found.get();
    String was = JobAccess.said(ctx, WAS);
    Optional<String> why = JobAccess.typed(ctx, WHY);
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put(WAS, was);
    typed.put(WHY, why.orElse(""));
    Optional<Deviation> known = known(at, was);
    boolean settles = known.filter(it -> it.why().isEmpty()).isPresent() && why.isPresent();
    if (was.isEmpty() || known.isPresent() && !settles) {
      String words =
          was.isEmpty()
              ? "write what it looks like, or what you did"
              : "this is noted here already";
      refuse(ctx, at, typed, new Problem("", WAS, was, words));
      return;
    }
    String back = Href.jobStep(at.job().id(), at.step().number());
    save(ctx, at, was, why, ctx.formParam("back") == null ? back : Back.of(ctx), typed);
  }

  /** Gives the reason why a value may stay outside, or was not taken. */
  private void reason(Context ctx) {
    Optional<JobStepRoutes.At> found = JobStepRoutes.at(jobs, ctx);
    if (found.isEmpty()) {
      return;
    }
    JobStepRoutes.At at = found.get();
    String reading = JobAccess.said(ctx, READING);
    Optional<String> why = JobAccess.typed(ctx, REASON);
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put(READING, reading);
    typed.put(REASON, why.orElse(""));
    Optional<Value> value =
        new StepView(at.work(), at.step())
            .excusable().stream().filter(it -> it.reading().id().equals(reading)).findFirst();
    if (value.isEmpty()) {
      refuse(
          ctx, at, typed, new Problem("", "", "", "there is no such value to give a reason for"));
    } else if (why.isEmpty()) {
      refuse(ctx, at, typed, new Problem("", REASON, "", "write why it may stay so"));
    } else {
      String back = Href.jobStep(at.job().id(), at.step().number());
      save(ctx, at, value.get().note(), why, back, typed);
    }
  }

  private static Optional<Deviation> known(JobStepRoutes.At at, String was) {
    return at.work().deviations(at.step()).stream().filter(it -> it.was().equals(was)).findFirst();
  }

  /** Adds a note, or gives the same one its reason. */
  private void save(
      Context ctx,
      JobStepRoutes.At at,
      String was,
      Optional<String> why,
      String back,
      Map<String, String> typed) {
    Deviation note = new Deviation(Optional.of(at.step().id()), was, why, Optional.empty());
    Optional<Deviation> known = known(at, was);
    // Notes of two people stand beside each other, so this is added to what there is now.
    List<Problem> problems =
        jobs.save(
            ctx,
            at.job(),
            at.view().basedOn(),
            it -> known.isPresent() ? it.settle(known.get(), why.orElse("")) : it.deviation(note),
            back,
            "otherwise at step " + at.step().number());
    if (!problems.isEmpty()) {
      JobStepRoutes.refuse(jobs, ctx, at.view(), Optional.of(at.step()), typed, problems);
    }
  }

  private void refuse(
      Context ctx, JobStepRoutes.At at, Map<String, String> typed, Problem problem) {
    JobStepRoutes.refuse(jobs, ctx, at.view(), Optional.of(at.step()), typed, List.of(problem));
  }

  /** Gives a deviation its reason; it may be at no step. */
  private void settle(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    Optional<String> why = JobAccess.typed(ctx, "settled");
    Optional<Deviation> which =
        job.deviations().stream()
            .filter(it -> it.was().equals(JobAccess.said(ctx, WAS)))
            .filter(it -> it.step().orElse("").equals(JobAccess.said(ctx, JobStepRoutes.STEP)))
            .findFirst();
    List<Problem> problems;
    if (job.isOver()) {
      problems = List.of(JobAccess.OVER);
    } else if (which.isEmpty() || why.isEmpty()) {
      String words = "write why it may stay so, or what was done about it";
      problems = List.of(new Problem("", "", "", words));
    } else {
      problems =
          jobs.save(
              ctx,
              job,
              view.get().basedOn(),
              it -> it.settle(which.get(), why.get()),
              Back.of(ctx),
              "settled: " + which.get().was());
    }
    if (!problems.isEmpty()) {
      JobAccess.refuse(ctx);
      jobs.front(ctx, view.get(), problems.stream().map(Problem::words).toList());
    }
  }
}
