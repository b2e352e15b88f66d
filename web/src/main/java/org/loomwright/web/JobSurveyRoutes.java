package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.Taken;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.job.BelowZero;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.JobWork;
import org.loomwright.web.job.Meter;
import org.loomwright.web.job.Question;
import org.loomwright.web.job.StepView;
import org.loomwright.web.shop.Href;

/** The questions of the guide, one after the other, and what the answers imply. */
final class JobSurveyRoutes implements Routes {
  /** Form field and parameter: number of the step with the question. */
  private static final String QUESTION = "question";

  private static final String NUMBER = "number";
  private static final String UNIT = "unit";
  private static final String VALUE = "value";
  private static final String FROM = "from";

  /** Form fields: ids of the cautions read, and whether power is on. */
  private static final String READ = "read";

  private static final String POWER = "power";

  /** What the form carries from one answer of the server to the next. */
  private static final List<String> CARRIED = List.of(NUMBER, UNIT, VALUE, FROM, READ, POWER);

  private static final List<String> FIELDS = List.of(NUMBER, READ, POWER);

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
              Optional<Question> question =
                  asked.isPresent()
                      ? find(work, asked.get())
                      : it.job().isOver()
                          ? Optional.empty()
                          : work.walk().openQuestion().flatMap(step -> Question.of(work, step));
              page(ctx, it, question, Map.of(FROM, "survey"), Map.of(), List.of());
            });
  }

  private static Optional<Question> find(JobWork work, String number) {
    return work.guide().steps().stream()
        .filter(it -> Integer.toString(it.number()).equals(number))
        .findFirst()
        .flatMap(it -> Question.of(work, it));
  }

  private void page(
      Context ctx,
      JobView view,
      Optional<Question> question,
      Map<String, String> typed,
      Map<String, String> wrong,
      List<Step> touched) {
    Map<String, Object> things = new LinkedHashMap<>();
    things.put(QUESTION, question);
    things.put("later", question.flatMap(JobSurveyRoutes::later));
    things.put("typed", typed);
    things.put("wrong", wrong);
    things.put("touched", touched);
    jobs.show(ctx, view, "Survey of " + view.job().name(), "job-survey.jte", things);
  }

  /** The open question after one that can't be answered now. */
  private static Optional<Step> later(Question question) {
    return question.work().walk().questions().stream()
        .filter(it -> it.number() > question.step().number())
        .filter(it -> !question.work().walk().isAnswered(it))
        .findFirst();
  }

  private void answer(Context ctx) {
    Optional<JobView> found = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (found.isEmpty()) {
      return;
    }
    JobView view = found.get();
    Map<String, String> typed = new LinkedHashMap<>();
    CARRIED.forEach(it -> typed.put(it, JobAccess.said(ctx, it)));
    Optional<Question> question = find(view.work().orElseThrow(), JobAccess.said(ctx, QUESTION));
    if (question.isEmpty() || view.job().isOver()) {
      Problem why =
          view.job().isOver()
              ? JobAccess.OVER
              : new Problem("", "", "", "the guide has no such question");
      refused(ctx, view, question, typed, List.of(why));
      return;
    }
    List<Problem> problems = new ArrayList<>(first(question.get(), typed));
    Optional<Answer> answer;
    Optional<Taken> measured = Optional.empty();
    if (question.get().isMeasured() && ctx.formParam(NUMBER) != null) {
      Optional<MeterNumber> number = number(question.get(), typed, problems);
      answer = number.flatMap(question.get()::answer);
      measured =
          answer.flatMap(Answer::band).flatMap(it -> taken(question.get(), number.get(), it));
    } else {
      answer = question.get().answer(typed.getOrDefault(VALUE, ""));
      if (answer.isEmpty()) {
        problems.add(new Problem("", "", "", "choose one of the answers"));
      }
    }
    if (!problems.isEmpty()) {
      refused(ctx, view, question, typed, problems);
      return;
    }
    keep(ctx, view, question.get(), answer.orElseThrow(), measured, typed);
  }

  /** What has to be read, done or seen to before a question is answered. */
  private static List<Problem> first(Question question, Map<String, String> typed) {
    List<Problem> problems = new ArrayList<>();
    JobWork work = question.work();
    String before = new StepView(work, question.step()).before();
    if (work.job().state() == JobState.UNDER_WAY
        && "steps".equals(typed.get(FROM))
        && !before.isEmpty()) {
      return List.of(new Problem("", "", "", "first comes " + before));
    }
    if (!question.read().equals(typed.get(READ)) && !question.read().isEmpty()) {
      problems.add(new Problem("", READ, "", "read this, and say that you did"));
    }
    question
        .power()
        .filter(on -> !(on ? "on" : "off").equals(typed.get(POWER)))
        .ifPresent(
            on ->
                problems.add(
                    new Problem(
                        "",
                        POWER,
                        "",
                        on ? "see to it that power is on" : "see to it that power is off")));
    return problems;
  }

  /** The number that was typed, when it can be the answer. */
  private static Optional<MeterNumber> number(
      Question question, Map<String, String> typed, List<Problem> problems) {
    String text = typed.getOrDefault(NUMBER, "");
    List<String> units = question.units();
    String said = typed.getOrDefault(UNIT, "");
    Meter.Reading read = Meter.read(text, units.contains(said) ? said : units.get(0));
    if (read instanceof Meter.Wrong no) {
      problems.add(new Problem("", NUMBER, text, no.words()));
      return Optional.empty();
    }
    MeterNumber number = ((Meter.Number) read).meter();
    typed.put(NUMBER, number.words());
    Optional<String> below = BelowZero.wrong(number, question.bands());
    if (below.isPresent()) {
      problems.add(new Problem("", NUMBER, text, below.get()));
      return Optional.empty();
    }
    if (question.answer(number).isEmpty()) {
      problems.add(new Problem("", NUMBER, text, between(number.words())));
      typed.put("was", question.step().title() + ": " + number.words());
    }
    return Optional.of(number);
  }

  private static String between(String number) {
    return number
        + " fits none of the answers. Look at the meter's range and its leads and measure again; if"
        + " it stays so, something is otherwise than the records say: note it, and make a finding"
        + " of it";
  }

  private static Optional<Taken> taken(Question question, MeterNumber number, Band band) {
    return number
        .in(band.unit())
        .map(
            it ->
                new Taken(
                    GuideRecordTaker.MEASURED + question.ask().trait(),
                    question.step().title(),
                    it.words(),
                    Optional.of(band.words())));
  }

  private void keep(
      Context ctx,
      JobView view,
      Question question,
      Answer answer,
      Optional<Taken> measured,
      Map<String, String> typed) {
    Job job = view.job();
    String trait = question.ask().trait();
    List<Step> touched = touched(view, trait, answer.value());
    if (!touched.isEmpty() && JobAccess.said(ctx, "sure").isEmpty()) {
      JobAccess.refuse(ctx);
      page(ctx, view, Optional.of(question), typed, Map.of(), touched);
      return;
    }
    List<Problem> problems =
        jobs.save(
            ctx,
            job,
            PageWriter.number(ctx, "basedOn"),
            it -> with(it, trait, answer.value(), measured),
            Href.job(job.id(), "steps".equals(typed.get(FROM)) ? "steps" : "survey"),
            question.step().title() + ": " + answer.words());
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
      Context ctx,
      JobView view,
      Optional<Question> question,
      Map<String, String> typed,
      List<Problem> problems) {
    JobAccess.refuse(ctx);
    page(ctx, view, question, typed, JobAccess.wrong(problems, FIELDS), List.of());
  }
}
