package org.loomwright.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.papers.words.StepFace;

/**
 * One step of the guide as a job comes to it.
 *
 * @param work the job and its guide
 * @param step the step
 */
public record StepView(JobWork work, Step step) {
  private static final double FACE_WIDTH_MM = 92;
  private static final double FACE_HEIGHT_MM = 70;

  /**
   * A fact about the step.
   *
   * @param what what it is
   * @param words the fact
   */
  public record Fact(String what, String words) {}

  private Names names() {
    return work.pages().names();
  }

  /** Whether it is done. */
  public boolean isDone() {
    return work.isDone(step);
  }

  /** Whether it lies on the way as far as the answers tell it. */
  public boolean isOnWay() {
    return work.way().contains(step);
  }

  /** Steps that have to be done before it, in words; empty for none. */
  public String before() {
    return JobWork.numbers(work.before(step)).orElse("");
  }

  /** Values it asks for. */
  public List<Value> values() {
    return work.values(step);
  }

  /** Values that stand open. */
  public List<Value> open() {
    return work.open(step);
  }

  /** Values that stand open and may stay so for a reason. */
  public List<Value> excusable() {
    return open().stream().filter(it -> !work.mustHold(it)).toList();
  }

  /** Whether all its values are written down. */
  public boolean hasValues() {
    return open().stream().noneMatch(it -> it.value().isBlank());
  }

  /** What to do about its values before it is done; empty when none stands open. */
  public String mend() {
    if (open().isEmpty()) {
      return "";
    }
    boolean strict = excusable().isEmpty();
    return open().stream()
        .filter(it -> !it.value().isBlank())
        .findFirst()
        .map(
            it ->
                (it.standing() == Value.Standing.NO_BEFORE
                        ? "the value before the work is missing; take it if it still can be"
                        : it.value() + " lies outside; put it right and take the value again")
                    + (strict ? "" : ", or give the reason below"))
        .orElse(
            "write the values down first"
                + (strict ? "" : ", or say below why one can't be taken"));
  }

  /** What was otherwise at it. */
  public List<Deviation> deviations() {
    return work.deviations(step);
  }

  /** Its face. */
  public Optional<StepFace> face() {
    return step.shown()
        .flatMap(it -> StepFace.of(names(), it, FACE_WIDTH_MM, FACE_HEIGHT_MM, Lettering.fitted()))
        .map(
            it ->
                new StepFace(
                    it.svg()
                        .replaceFirst(
                            "width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\""),
                    it.words()));
  }

  /** Where it is done. */
  public String place() {
    return step.place().isEmpty() ? "" : Figures.capital(names().place(step.place()));
  }

  /** Whether its text says more than its title. */
  public boolean hasText() {
    return !step.text().isEmpty() && !step.text().equals(step.title());
  }

  /** What has to be known of how it is taken back; empty where that is easy. */
  public String undo() {
    return step.undo() == Undo.SPECIAL_TOOL
        ? "Comes out again with a special tool only. Be sure before you do it."
        : step.undo() == Undo.NOT_AT_ALL
            ? "This can't be taken back. Be sure before you do it."
            : "";
  }

  /** What has to be open, power, tools and the lead. */
  public List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    lead()
        .ifPresent(
            it ->
                facts.add(
                    new Fact(
                        "Lead",
                        it.label()
                            + ", "
                            + it.colour().text()
                            + ", "
                            + Figures.quantity(it.areaMm2())
                            + " mm²")));
    if (!step.openings().isEmpty()) {
      facts.add(
          new Fact(
              "Open now",
              String.join(", ", step.openings().stream().map(names()::opening).toList())));
    }
    step.live().ifPresent(it -> facts.add(new Fact("Power", it ? "on" : "off, battery isolated")));
    step.ask().ifPresent(it -> facts.add(new Fact("How", how(it.how()))));
    if (!step.tools().isEmpty()) {
      facts.add(new Fact("Tools", String.join(", ", step.tools())));
    }
    return facts;
  }

  private static String how(TellHow how) {
    return switch (how) {
      case ASK_OWNER -> "ask the owner";
      case LOOK -> "look";
      case MEASURE_LIVE -> "measure with power on";
      case MEASURE_ISOLATED -> "measure with the battery isolated";
    };
  }

  /** The lead it works on. */
  public Optional<Lead> lead() {
    return step.act()
        .flatMap(StepView::leadOf)
        .flatMap(
            id ->
                work.pages().plan().design().leads().stream()
                    .filter(it -> it.id().equals(id))
                    .findFirst());
  }

  private static Optional<String> leadOf(Act act) {
    if (act instanceof Act.Lay it) {
      return Optional.of(it.lead());
    } else if (act instanceof Act.Land it) {
      return Optional.of(it.lead());
    } else if (act instanceof Act.Change it) {
      return Optional.of(it.lead());
    } else if (act instanceof Act.Park it) {
      return Optional.of(it.lead());
    }
    return Optional.empty();
  }

  /** The step of the way after it. */
  public Optional<Step> following() {
    int at = work.way().indexOf(step);
    return at < 0 || at + 1 >= work.way().size()
        ? Optional.empty()
        : Optional.of(work.way().get(at + 1));
  }

  /** The step of the way before it. */
  public Optional<Step> preceding() {
    int at = work.way().indexOf(step);
    return at <= 0 ? Optional.empty() : Optional.of(work.way().get(at - 1));
  }

  /** "7 of 61": its place on the way as far as that is known; empty when it is not on it. */
  public String count() {
    int at = work.way().indexOf(step);
    return at < 0 ? "" : at + 1 + " of " + work.way().size();
  }
}
