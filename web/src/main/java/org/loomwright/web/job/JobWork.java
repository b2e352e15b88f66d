package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.planner.walk.GuideWalk;
import org.loomwright.web.shop.KitPages;

/**
 * A job held against the guide it follows: what is done, what comes next, and what stands against
 * the sign-off.
 */
public final class JobWork {
  private final Job job;
  private final KitPages pages;
  private final GuideWalk walk;
  private final String print;
  private final List<Step> way;

  private JobWork(Job job, KitPages pages, Map<String, String> answers) {
    this.job = job;
    this.pages = pages;
    this.walk = GuideWalk.of(pages.plan(), pages.order().vehicle(), answers);
    this.print = GuidePrint.of(pages.plan());
    this.way = walk.way();
  }

  /** A job and the plan it is worked by. */
  public static JobWork of(Job job, KitPages pages) {
    return new JobWork(job, pages, job.answers());
  }

  /** The same with other answers. */
  public JobWork with(Map<String, String> answers) {
    return new JobWork(job, pages, answers);
  }

  /** The job. */
  public Job job() {
    return job;
  }

  /** The plan. */
  public KitPages pages() {
    return pages;
  }

  /** Its guide. */
  public Guide guide() {
    return pages.plan().guide();
  }

  /** Fingerprint of the guide. */
  public String print() {
    return print;
  }

  /** The guide as the answers lead. */
  public GuideWalk walk() {
    return walk;
  }

  /** The way as far as the answers tell it. */
  public List<Step> way() {
    return way;
  }

  /** Whether the job was begun by another guide than this one. */
  public boolean isOfOtherGuide() {
    return job.guide().filter(it -> !it.equals(print)).isPresent();
  }

  /** Whether a step is done; a question is when it is answered. */
  public boolean isDone(Step step) {
    return step.ask().isPresent() ? walk.isAnswered(step) : job.done().contains(step.id());
  }

  /** How many steps of the way are done. */
  public long doneCount() {
    return way.stream().filter(this::isDone).count();
  }

  /** How many steps of the way, as far as it is known, are still to be done. */
  public long leftCount() {
    return way.size() - doneCount();
  }

  /** The first step of the way that is not done. */
  public Optional<Step> next() {
    return way.stream().filter(it -> !isDone(it)).findFirst();
  }

  /** Steps done that the answers do not lead to, those of the vehicle as it was thought to be. */
  public List<Step> astray() {
    List<String> ids = walk.stages().stream().map(it -> it.step().id()).toList();
    return guide().steps().stream()
        .filter(it -> job.done().contains(it.id()) && !ids.contains(it.id()))
        .toList();
  }

  /**
   * Steps that have to be done before one: before what can't be taken back lightly, and before the
   * battery is isolated, connected or a fuse put in, all of them; before others those that keep
   * people safe or decide the way; before a look at what was done, that.
   */
  public List<Step> before(Step step) {
    int at = way.indexOf(step);
    List<Step> missing = new ArrayList<>();
    for (int i = 0; i < at; i++) {
      Step earlier = way.get(i);
      boolean looked = i == at - 1 && step.kind() == StepKind.CONFIRM;
      if (!isDone(earlier) && (isGrave(step) || isGate(earlier) || looked)) {
        missing.add(earlier);
      }
    }
    return missing;
  }

  /** Steps done later that rest on one, so that its tick can't be taken off before theirs. */
  public List<Step> restOn(Step step) {
    int at = way.indexOf(step);
    return !isGate(step) || at < 0
        ? List.of()
        : way.subList(at + 1, way.size()).stream()
            .filter(it -> it.ask().isEmpty() && isDone(it))
            .toList();
  }

  private static boolean isGate(Step step) {
    return step.kind() == StepKind.CAUTION
        || step.ask().isPresent()
        || step.act().filter(JobWork::switches).isPresent();
  }

  private static boolean switches(Act act) {
    return act instanceof Act.Isolate || act instanceof Act.Reconnect;
  }

  private static boolean isGrave(Step step) {
    return step.undo() != Undo.EASILY
        || step.act()
            .filter(it -> switches(it) || it instanceof Act.FitFuse || it instanceof Act.Change)
            .isPresent();
  }

  /** Values that a step asks for on this vehicle. */
  public List<Value> values(Step step) {
    Map<String, Value> values = new LinkedHashMap<>();
    for (Reading it : step.readings()) {
      if (walk.holds(it.when())) {
        values.putIfAbsent(it.id(), Value.of(job, step, it));
      }
    }
    return List.copyOf(values.values());
  }

  /** Values that the way asks for, as far as it is known. */
  public List<Value> values() {
    return way.stream().flatMap(it -> values(it).stream()).toList();
  }

  /** Deviations at a step. */
  public List<Deviation> deviations(Step step) {
    return job.deviations().stream()
        .filter(it -> it.step().filter(step.id()::equals).isPresent())
        .toList();
  }

  /** The step a deviation is at. */
  public Optional<Step> step(Deviation deviation) {
    return deviation.step().flatMap(guide()::step);
  }

  /** What stands against the sign-off, in words; empty when nothing does. */
  public List<String> against() {
    List<String> against = new ArrayList<>();
    if (job.state() != JobState.UNDER_WAY) {
      against.add("The work is " + job.state().words() + ", not under way.");
      return against;
    }
    if (isOfOtherGuide()) {
      against.add(
          "It was begun by another guide ("
              + job.guide().orElse("")
              + ") than this one ("
              + print
              + ").");
    }
    if (job.partNumber().isEmpty()) {
      against.add("No part number is written down.");
    }
    walk.openQuestion()
        .ifPresent(it -> against.add("The question of step " + it.number() + " is open."));
    if (!walk.isServed()) {
      against.add("The kit is not made for a vehicle with these answers.");
    }
    numbers(way.stream().filter(it -> !isDone(it)).toList())
        .ifPresent(it -> against.add("Not done yet: " + it + "."));
    numbers(astray())
        .ifPresent(
            it -> against.add("Done, but not called for by the answers: " + it + "; undo them."));
    List<Value> open = values().stream().filter(Value::isOpen).toList();
    List<Value> missing =
        open.stream().filter(it -> it.standing() == Value.Standing.MISSING).toList();
    numbers(missing.stream().map(Value::step).distinct().toList())
        .ifPresent(
            it ->
                against.add(
                    "Not taken yet: "
                        + (missing.size() == 1 ? "a value at " : missing.size() + " values at ")
                        + it
                        + "."));
    for (Value it : open) {
      if (!missing.contains(it)) {
        against.add(
            it.title()
                + ": "
                + it.value()
                + " lies outside, and no reason is given (step "
                + it.step().number()
                + ").");
      }
    }
    for (Deviation it : job.deviations()) {
      if (it.why().isEmpty()) {
        against.add(
            "What was otherwise is not settled"
                + step(it).map(step -> " (step " + step.number() + ")").orElse("")
                + ": "
                + it.was());
      }
    }
    return against;
  }

  /** "step 4" or "steps 4, 7 and 9 to 12"; empty for none. */
  static Optional<String> numbers(List<Step> steps) {
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    List<String> spans = new ArrayList<>();
    int from = steps.get(0).number();
    int to = from;
    for (Step it : steps.subList(1, steps.size())) {
      if (it.number() != to + 1) {
        spans.add(span(from, to));
        from = it.number();
      }
      to = it.number();
    }
    spans.add(span(from, to));
    String last = spans.remove(spans.size() - 1);
    return Optional.of(
        (steps.size() == 1 ? "step " : "steps ")
            + (spans.isEmpty() ? last : String.join(", ", spans) + " and " + last));
  }

  private static String span(int from, int to) {
    return from == to ? "" + from : from + " to " + to;
  }
}
