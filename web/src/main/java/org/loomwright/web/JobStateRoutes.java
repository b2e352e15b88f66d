package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.JobWork;
import org.loomwright.web.shop.Href;

/** How far a job is: fitting begins, is signed off, given up, opened again. */
final class JobStateRoutes implements Routes {
  private static final List<String> SIGN = List.of("when", "words", "partNumber", "serial");

  private final JobAccess jobs;

  JobStateRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (!jobs.hasStore()) {
      return;
    }
    routes.post("/job/{id}/release", this::release);
    routes.get("/job/{id}/begin", ctx -> formPage(ctx, "Begin fitting: ", "job-begin.jte"));
    routes.post("/job/{id}/begin", this::begin);
    routes.get("/job/{id}/sign", ctx -> formPage(ctx, "Sign-off of ", "job-sign.jte"));
    routes.post("/job/{id}/sign", this::sign);
    routes.post("/job/{id}/give-up", this::giveUp);
    routes.post("/job/{id}/reopen", this::reopen);
  }

  private void formPage(Context ctx, String title, String template) {
    jobs.find(ctx)
        .filter(it -> jobs.isReady(ctx, it))
        .ifPresent(it -> form(ctx, it, title, template, today(it.job()), Map.of()));
  }

  private static Map<String, String> today(Job job) {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("when", LocalDate.now(ZoneId.systemDefault()).toString());
    typed.put("partNumber", job.partNumber().orElse(""));
    typed.put("serial", job.serial().orElse(""));
    return typed;
  }

  private void form(
      Context ctx,
      JobView view,
      String title,
      String template,
      Map<String, String> typed,
      Map<String, String> wrong) {
    jobs.show(
        ctx, view, title + view.job().name(), template, Map.of("typed", typed, "wrong", wrong));
  }

  /** Names the release that is fitted. */
  private void release(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    String said = JobAccess.said(ctx, "release");
    boolean known =
        jobs.store().releases().of(job.kit()).stream()
            .anyMatch(it -> Long.toString(it.number()).equals(said));
    if (!known || job.state() != JobState.SURVEY && !JobAccess.needsRelease(view.get())) {
      refuse(
          ctx,
          view.get(),
          known
              ? "the job is over, or is worked by the release it names"
              : "choose one of the releases");
      return;
    }
    save(ctx, view.get(), it -> it.release(Integer.parseInt(said)), "chose release " + said);
  }

  private void begin(Context ctx) {
    Optional<JobView> view = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    JobWork work = view.get().work().orElseThrow();
    Map<String, String> typed = new LinkedHashMap<>();
    SIGN.forEach(it -> typed.put(it, JobAccess.said(ctx, it)));
    Map<String, String> wrong = new LinkedHashMap<>();
    if (job.state() != JobState.SURVEY) {
      wrong.put("", "fitting has begun already, or the job is over");
    } else if (job.release().isEmpty()) {
      wrong.put("", "the kit of this job is not released, so it can't be fitted; choose a release");
    } else if (!work.walk().isServed()) {
      wrong.put("", "the kit is not made for a vehicle with these answers");
    }
    List<String> numbers = view.get().numbers().stream().map(PartNumber::id).toList();
    if (!numbers.contains(typed.getOrDefault("partNumber", ""))) {
      wrong.put("partNumber", "choose the part number on the kit; it has to be " + either(numbers));
    }
    if (wrong.isEmpty()) {
      wrong.putAll(
          JobAccess.wrong(
              jobs.save(
                  ctx,
                  job,
                  PageWriter.number(ctx, "basedOn"),
                  it ->
                      it.state(JobState.UNDER_WAY)
                          .with("partNumber", JobAccess.typed(ctx, "partNumber"))
                          .with("serial", JobAccess.typed(ctx, "serial"))
                          .with("guide", Optional.of(work.print())),
                  Href.job(job.id(), "steps"),
                  "fitting begins"),
              SIGN));
    }
    if (!wrong.isEmpty()) {
      JobAccess.refuse(ctx);
      form(ctx, view.get(), "Begin fitting: ", "job-begin.jte", typed, wrong);
    }
  }

  private static String either(List<String> words) {
    return words.isEmpty() ? "one of this kit" : String.join(" or ", words);
  }

  private void sign(Context ctx) throws IOException {
    Optional<JobView> view = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (view.isEmpty()) {
      return;
    }
    JobWork work = view.get().work().orElseThrow();
    Map<String, String> typed = new LinkedHashMap<>();
    SIGN.forEach(it -> typed.put(it, JobAccess.said(ctx, it)));
    Map<String, String> wrong = new LinkedHashMap<>();
    String who = Saver.name(ctx);
    if (who.isEmpty()) {
      wrong.put(Saver.WHO, "write your name: you answer for the work");
    }
    if (!work.against().isEmpty()) {
      wrong.put("", "something stands against it, as listed below");
    }
    if (wrong.isEmpty()) {
      SignOff signOff =
          new SignOff(who, typed.getOrDefault("when", ""), JobAccess.typed(ctx, "words"));
      wrong.putAll(JobAccess.wrong(jobs.sign(ctx, view.get(), signOff), SIGN));
    }
    if (!wrong.isEmpty()) {
      JobAccess.refuse(ctx);
      form(ctx, view.get(), "Sign-off of ", "job-sign.jte", typed, wrong);
    }
  }

  private void giveUp(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Optional<String> why = JobAccess.typed(ctx, "reason");
    if (why.isEmpty() || view.get().job().isOver()) {
      refuse(
          ctx,
          view.get(),
          why.isEmpty()
              ? "write why the job is given up, and what was left in the vehicle"
              : "the job is over already");
      return;
    }
    Deviation given =
        new Deviation(Optional.empty(), "The job was given up.", why, Optional.empty());
    save(
        ctx,
        view.get(),
        it -> it.state(JobState.GIVEN_UP).deviation(given),
        "given up: " + why.get());
  }

  private void reopen(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    Optional<String> why = JobAccess.typed(ctx, "reason");
    if (why.isEmpty() || !job.isOver()) {
      refuse(
          ctx,
          view.get(),
          why.isEmpty() ? "write why the job is opened again" : "the job is not over");
      return;
    }
    JobState state = job.partNumber().isEmpty() ? JobState.SURVEY : JobState.UNDER_WAY;
    save(
        ctx,
        view.get(),
        it -> it.state(state).signOff(Optional.empty()),
        "opened again: " + why.get());
  }

  private void save(Context ctx, JobView view, UnaryOperator<JobText> change, String done) {
    List<Problem> problems =
        jobs.save(ctx, view.job(), view.basedOn(), change, Href.job(view.job().id()), done);
    if (!problems.isEmpty()) {
      refuse(ctx, view, problems.stream().map(Problem::words).toList());
    }
  }

  private void refuse(Context ctx, JobView view, String problem) {
    refuse(ctx, view, List.of(problem));
  }

  private void refuse(Context ctx, JobView view, List<String> problems) {
    JobAccess.refuse(ctx);
    jobs.front(ctx, view, problems);
  }
}
