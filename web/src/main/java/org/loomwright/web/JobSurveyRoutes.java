package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.JobWork;
import org.loomwright.web.job.Meter;
import org.loomwright.web.shop.Href;

/** The questions of the guide, one after the other, and what the answers imply. */
final class JobSurveyRoutes implements Routes {
  /** Form field and parameter: number of the step with the question. */
  private static final String QUESTION = "question";

  private static final String NUMBER = "number";

  private final JobAccess jobs;

  JobSurveyRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/job/{id}/survey", this::show);
    if (jobs.hasStore()) {
      routes.post("/job/{id}/survey", this::answer);
    }
  }

  private void show(Context ctx) {
    jobs.find(ctx)
        .filter(it -> jobs.isReady(ctx, it))
        .ifPresent(
            it -> {
              JobWork work = it.work().orElseThrow();
              Optional<String> asked = Optional.ofNullable(ctx.queryParam(QUESTION));
              Optional<Step> question =
                  asked.isPresent()
                      ? find(work, asked.get())
                      : it.job().isOver() ? Optional.empty() : work.walk().openQuestion();
              page(ctx, it, question, "", Map.of(), List.of(), "");
            });
  }

  private static Optional<Step> find(JobWork work, String number) {
    return work.guide().steps().stream()
        .filter(it -> it.ask().isPresent() && Integer.toString(it.number()).equals(number))
        .findFirst();
  }

  private void page(
      Context ctx,
      JobView view,
      Optional<Step> question,
      String typed,
      Map<String, String> wrong,
      List<Step> touched,
      String value) {
    Map<String, Object> things = new LinkedHashMap<>();
    things.put(QUESTION, question);
    things.put("later", question.flatMap(it -> later(view.work().orElseThrow(), it)));
    things.put("typed", typed);
    things.put("wrong", wrong);
    things.put("touched", touched);
    things.put("value", value);
    jobs.show(ctx, view, "Survey of " + view.job().name(), "job-survey.jte", things);
  }

  /** The open question after one that can't be answered now. */
  private static Optional<Step> later(JobWork work, Step question) {
    return work.walk().questions().stream()
        .filter(it -> it.number() > question.number() && !work.walk().isAnswered(it))
        .findFirst();
  }

  private void answer(Context ctx) {
    Optional<JobView> found = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (found.isEmpty()) {
      return;
    }
    JobView view = found.get();
    JobWork work = view.work().orElseThrow();
    Optional<Step> question = find(work, JobAccess.said(ctx, QUESTION));
    Optional<Ask> ask = question.flatMap(Step::ask);
    if (ask.isEmpty() || view.job().isOver()) {
      Problem why =
          view.job().isOver()
              ? JobAccess.OVER
              : new Problem("", "", "", "the guide has no such question");
      refused(ctx, view, question, "", List.of(why));
      return;
    }
    String typed = JobAccess.said(ctx, NUMBER);
    Optional<Taken> measured = Optional.empty();
    Optional<Answer> answer;
    if (isMeasured(ask.get()) && ctx.formParam(NUMBER) != null) {
      List<String> units = units(ask.get());
      String said = JobAccess.said(ctx, "unit");
      Meter.Reading read = Meter.read(typed, units.contains(said) ? said : units.get(0));
      if (read instanceof Meter.Wrong no) {
        refused(ctx, view, question, typed, List.of(new Problem("", NUMBER, typed, no.words())));
        return;
      }
      MeterNumber number = ((Meter.Number) read).meter();
      typed = number.words();
      answer = inBand(ask.get(), number);
      if (answer.isEmpty()) {
        refused(
            ctx,
            view,
            question,
            typed,
            List.of(new Problem("", NUMBER, typed, between(number.words()))));
        return;
      }
      measured =
          answer
              .flatMap(Answer::band)
              .flatMap(
                  band ->
                      number
                          .in(band.unit())
                          .map(
                              it ->
                                  new Taken(
                                      GuideRecordTaker.MEASURED + ask.get().trait(),
                                      question.get().title(),
                                      it.words(),
                                      Optional.of(band.words()))));
    } else {
      String value = JobAccess.said(ctx, "value");
      answer = ask.get().answers().stream().filter(it -> it.value().equals(value)).findFirst();
    }
    if (answer.isEmpty()) {
      refused(
          ctx,
          view,
          question,
          typed,
          List.of(new Problem("", "", "", "choose one of the answers")));
      return;
    }
    keep(ctx, view, question.get(), answer.get(), measured, typed);
  }

  private static String between(String number) {
    return number
        + " fits none of the answers. Look at the meter's range and its leads and measure again; if"
        + " it stays so, something is otherwise than the records say: note it, and make a finding"
        + " of it";
  }

  private void keep(
      Context ctx,
      JobView view,
      Step question,
      Answer answer,
      Optional<Taken> measured,
      String typed) {
    Job job = view.job();
    String trait = question.ask().orElseThrow().trait();
    List<Step> touched = touched(view, trait, answer.value());
    if (!touched.isEmpty() && JobAccess.said(ctx, "sure").isEmpty()) {
      JobAccess.refuse(ctx);
      page(ctx, view, Optional.of(question), typed, Map.of(), touched, answer.value());
      return;
    }
    List<Problem> problems =
        jobs.save(
            ctx,
            job,
            PageWriter.number(ctx, "basedOn"),
            it -> with(it, trait, answer.value(), measured),
            back(ctx, job),
            question.title() + ": " + answer.words());
    if (!problems.isEmpty()) {
      refused(ctx, view, Optional.of(question), typed, problems);
    }
  }

  private static JobText with(JobText text, String trait, String value, Optional<Taken> measured) {
    text.answer(trait, value);
    return measured
        .map(text::taken)
        .orElseGet(() -> text.withoutTaken(GuideRecordTaker.MEASURED + trait));
  }

  /** Where an answer was given at its step, the steps go on. */
  private static String back(Context ctx, Job job) {
    return Href.job(job.id(), JobAccess.said(ctx, "from").equals("steps") ? "steps" : "survey");
  }

  /** Steps done that another answer does not lead to. */
  private static List<Step> touched(JobView view, String trait, String value) {
    Map<String, String> answers = new LinkedHashMap<>(view.job().answers());
    answers.put(trait, value);
    JobWork before = view.work().orElseThrow();
    List<Step> after = new ArrayList<>(before.with(answers).astray());
    after.removeAll(before.astray());
    return after;
  }

  private void refused(
      Context ctx, JobView view, Optional<Step> question, String typed, List<Problem> problems) {
    JobAccess.refuse(ctx);
    page(ctx, view, question, typed, JobAccess.wrong(problems, List.of(NUMBER)), List.of(), "");
  }

  /** Whether a number picks the answer. */
  private static boolean isMeasured(Ask ask) {
    return ask.answers().stream().anyMatch(it -> it.band().isPresent());
  }

  /** Units the bands of the answers are in. */
  static List<String> units(Ask ask) {
    return ask.answers().stream()
        .flatMap(it -> it.band().stream())
        .map(Band::unit)
        .distinct()
        .toList();
  }

  private static Optional<Answer> inBand(Ask ask, MeterNumber number) {
    return ask.answers().stream()
        .filter(
            it ->
                it.band()
                    .flatMap(band -> number.in(band.unit()).filter(in -> band.holds(in.value())))
                    .isPresent())
        .findFirst();
  }
}
