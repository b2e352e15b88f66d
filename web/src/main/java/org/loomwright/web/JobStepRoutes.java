package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.Taken;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.job.BelowZero;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.JobWork;
import org.loomwright.web.job.Meter;
import org.loomwright.web.job.StepView;
import org.loomwright.web.job.Value;
import org.loomwright.web.shop.Href;

/** The steps of the guide as a job takes them: ticks and values. */
final class JobStepRoutes implements Routes {
  /** Form field and parameter: id of a step in forms, its number in addresses. */
  static final String STEP = "step";

  private static final List<String> FIELDS = List.of("was", "why", "photo");

  private final JobAccess jobs;

  JobStepRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/job/{id}/steps", this::show);
    if (jobs.hasStore()) {
      routes.post("/job/{id}/tick", this::tick);
      routes.post("/job/{id}/take", this::take);
    }
  }

  private void show(Context ctx) {
    jobs.find(ctx)
        .filter(it -> jobs.isReady(ctx, it))
        .ifPresent(
            it -> {
              JobWork work = it.work().orElseThrow();
              Optional<String> asked = Optional.ofNullable(ctx.queryParam(STEP));
              Optional<Step> step = asked.isPresent() ? numbered(work, asked.get()) : work.next();
              page(jobs, ctx, it, step, Map.of(), Map.of());
            });
  }

  private static Optional<Step> numbered(JobWork work, String number) {
    return work.guide().steps().stream()
        .filter(it -> Integer.toString(it.number()).equals(number))
        .findFirst();
  }

  /** Shows a step, with what was typed at it and what is wrong. */
  static void page(
      JobAccess jobs,
      Context ctx,
      JobView view,
      Optional<Step> step,
      Map<String, String> typed,
      Map<String, String> wrong) {
    Map<String, Object> things = new LinkedHashMap<>();
    things.put(STEP, step.map(it -> new StepView(view.work().orElseThrow(), it)));
    things.put("typed", typed);
    things.put("wrong", wrong);
    jobs.show(ctx, view, "Steps of " + view.job().name(), "job-steps.jte", things);
  }

  /** What a form at a step is about. */
  record At(JobView view, JobWork work, Step step) {
    Job job() {
      return view.job();
    }
  }

  /** The step a form is about; when it can't be worked on, the page says why. */
  static Optional<At> at(JobAccess jobs, Context ctx) {
    Optional<JobView> view = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (view.isEmpty()) {
      return Optional.empty();
    }
    JobWork work = view.get().work().orElseThrow();
    Optional<Step> step = work.guide().step(JobAccess.said(ctx, STEP));
    String trouble = trouble(view.get().job(), work, step);
    if (!trouble.isEmpty()) {
      refuse(jobs, ctx, view.get(), step, Map.of(), List.of(new Problem("", "", "", trouble)));
      return Optional.empty();
    }
    return Optional.of(new At(view.get(), work, step.orElseThrow()));
  }

  private static String trouble(Job job, JobWork work, Optional<Step> step) {
    if (job.isOver()) {
      return JobAccess.OVER.message();
    }
    if (step.isEmpty()) {
      return "the guide has no such step";
    }
    return work.isOfOtherGuide()
        ? "the job was begun by another guide than the one at hand; choose the release it was begun"
            + " with"
        : "";
  }

  /** Says at a step why a form was refused. */
  static void refuse(
      JobAccess jobs,
      Context ctx,
      JobView view,
      Optional<Step> step,
      Map<String, String> typed,
      List<Problem> problems) {
    List<String> fields = new ArrayList<>(FIELDS);
    fields.addAll(typed.keySet());
    JobAccess.refuse(ctx);
    page(jobs, ctx, view, step, typed, JobAccess.wrong(problems, fields));
  }

  private void save(
      Context ctx,
      At at,
      UnaryOperator<JobText> change,
      Map<String, String> typed,
      String back,
      String done) {
    List<Problem> problems =
        jobs.save(ctx, at.job(), PageWriter.number(ctx, "basedOn"), change, back, done);
    if (!problems.isEmpty()) {
      refuse(jobs, ctx, at.view(), Optional.of(at.step()), typed, problems);
    }
  }

  private void tick(Context ctx) {
    Optional<At> found = at(jobs, ctx);
    if (found.isEmpty()) {
      return;
    }
    At at = found.get();
    boolean done = !JobAccess.said(ctx, "done").equals("no");
    String against = done ? againstTick(at) : againstUntick(at);
    if (!against.isEmpty()) {
      refuse(
          jobs,
          ctx,
          at.view(),
          Optional.of(at.step()),
          Map.of(),
          List.of(new Problem("", "", "", against)));
      return;
    }
    String page = Href.job(at.job().id(), "steps");
    save(
        ctx,
        at,
        it -> it.done(at.step().id(), done),
        Map.of(),
        done ? page : Href.jobStep(at.job().id(), at.step().number()),
        (done ? "done: step " : "not done: step ") + at.step().number());
  }

  private static String againstTick(At at) {
    StepView view = new StepView(at.work(), at.step());
    if (at.job().state() != JobState.UNDER_WAY) {
      return "fitting has not begun; the survey comes first";
    }
    if (!view.isOnWay()) {
      return "this step is not on the way of this vehicle, as far as the answers tell";
    }
    if (at.step().ask().isPresent()) {
      return "a question is done when it is answered";
    }
    if (!view.before().isEmpty()) {
      return "first comes " + view.before();
    }
    return at.work()
        .wrongNumber()
        .map(it -> "part number " + it + "; get the right kit, or write its number anew")
        .orElse(view.mend());
  }

  private static String againstUntick(At at) {
    return at.work().restOn(at.step()).stream()
        .findFirst()
        .map(
            it ->
                "step "
                    + it.number()
                    + " was done on the strength of it; take the tick off that one first")
        .orElse("");
  }

  private void take(Context ctx) {
    Optional<At> found = at(jobs, ctx);
    if (found.isEmpty()) {
      return;
    }
    At at = found.get();
    Map<String, String> typed = new LinkedHashMap<>();
    List<Taken> taken = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Value it : at.work().values(at.step())) {
      String text = JobAccess.said(ctx, it.field());
      typed.put(it.field(), text);
      if (!text.isEmpty()) {
        value(it, text, taken, problems);
      }
    }
    if (problems.isEmpty() && taken.isEmpty()) {
      problems.add(new Problem("", "", "", "write down at least one value"));
    }
    if (!problems.isEmpty()) {
      refuse(jobs, ctx, at.view(), Optional.of(at.step()), typed, problems);
      return;
    }
    save(
        ctx,
        at,
        it -> {
          taken.forEach(it::taken);
          return it;
        },
        typed,
        Href.jobStep(at.job().id(), at.step().number()),
        "values of step " + at.step().number());
  }

  private static void value(Value it, String text, List<Taken> taken, List<Problem> problems) {
    Optional<String> wanted = Optional.of(it.wanted()).filter(words -> !words.isEmpty());
    String kept = text;
    if (it.reading().kind() == ReadingKind.NUMBER) {
      Meter.Reading read = Meter.read(text, it.unit());
      if (read instanceof Meter.Wrong no) {
        problems.add(new Problem("", it.field(), text, no.words()));
        return;
      }
      MeterNumber number = ((Meter.Number) read).meter();
      Optional<String> below = BelowZero.wrong(number, it.reading().band().stream().toList());
      if (below.isPresent()) {
        problems.add(new Problem("", it.field(), text, below.get()));
        return;
      }
      kept = number.words();
    } else if (it.reading().kind() == ReadingKind.WORKS && Meter.works(text).isEmpty()) {
      problems.add(new Problem("", it.field(), text, "say yes or no"));
      return;
    }
    taken.add(new Taken(it.reading().id(), it.reading().name(), kept, wanted));
  }
}
