package org.loomwright.papers.section;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Forks;
import org.loomwright.papers.words.Phase;

/** The instructions, step by step. */
final class GuideSection implements Section {
  private static final int TOOL_COLUMNS = 3;

  @Override
  public String id() {
    return "guide";
  }

  @Override
  public String title() {
    return "Guide";
  }

  @Override
  public void write(Pack pack, Html html) {
    Guide guide = pack.plan().guide();
    Map<String, Phase> phases = Phase.of(guide);
    StepPage page = new StepPage(pack, new Forks(guide));

    front(guide, phases, html);
    Optional<Phase> heading = Optional.empty();
    Optional<Step> before = Optional.empty();
    boolean open = false;
    for (Step step : guide.steps()) {
      Phase phase = phases.getOrDefault(step.id(), Phase.FIT);
      boolean newPhase = !heading.equals(Optional.of(phase));
      if (newPhase && heading.filter(it -> it != Phase.READ).isPresent()) {
        odd(html);
      }
      // A heading stays with its first step, and an act with the look at what was done.
      if (open && (newPhase || step.kind() != StepKind.CONFIRM)) {
        html.close("div");
        open = false;
      }
      if (!open) {
        html.open("div", "keep");
        open = true;
      }
      if (newPhase) {
        html.line("p", "phase", phase.words());
        before = Optional.empty();
      }
      page.write(step, before, phase, html);
      heading = Optional.of(phase);
      before = Optional.of(step);
    }
    if (open) {
      odd(html);
      html.close("div");
    }
  }

  /** What is filled in, laid out and known before the first step. */
  private static void front(Guide guide, Map<String, Phase> phases, Html html) {
    html.open("div", "form")
        .open("p", "")
        .blank("Vehicle", 60)
        .blank("Serial of the kit", 45)
        .close("p")
        .open("p", "")
        .blank("Fitted by", 60)
        .blank("Date", 35)
        .close("p")
        .close("div");
    long questions = guide.steps().stream().filter(it -> it.ask().isPresent()).count();
    html.line(
        "p",
        "",
        (questions == 0
                ? "On average the work takes "
                : "On average "
                    + Figures.average(guide.expectedQuestions())
                    + " of "
                    + questions
                    + (questions == 1 ? " question is" : " questions are")
                    + " asked, and the work takes ")
            + Figures.minutes(guide.expectedMinutes())
            + " min, over the mix of vehicles.");
    html.line("h2", "", "Tools");
    tools(guide.tools(), html);
    html.line("h2", "", "The parts of the work");
    html.open("table", "plain");
    EnumSet<Phase> seen = EnumSet.noneOf(Phase.class);
    for (Step step : guide.steps()) {
      Phase phase = phases.getOrDefault(step.id(), Phase.FIT);
      if (seen.add(phase)) {
        html.open("tr", "")
            .line("td", "", phase.words())
            .line("td", "", "from step\u00A0" + step.number())
            .close("tr");
      }
    }
    html.close("table");
    html.line(
        "p",
        "note",
        "Follow the numbers. Where the way parts, a fork (\u25C6) says where to go on; steps that"
            + " are passed over are not for this vehicle.");
  }

  private static void tools(List<String> tools, Html html) {
    if (tools.isEmpty()) {
      html.line("p", "", "None.");
      return;
    }
    int rows = (tools.size() + TOOL_COLUMNS - 1) / TOOL_COLUMNS;
    html.open("table", "tools");
    for (int row = 0; row < rows; row++) {
      html.open("tr", "");
      for (int column = 0; column < TOOL_COLUMNS; column++) {
        int at = column * rows + row;
        html.open("td", "");
        if (at < tools.size()) {
          html.tickBox().words(" " + tools.get(at));
        }
        html.close("td");
      }
      html.close("tr");
    }
    html.close("table");
  }

  /** Room for what the guide did not foresee; stays with the last step of its part. */
  private static void odd(Html html) {
    html.open("div", "odd")
        .line("p", "title", "It does not look like that? Stop, and note it here.")
        .open("p", "")
        .blank("Step", 14)
        .blank("What you see", 120)
        .close("p")
        .open("p", "")
        .blank("", 162)
        .close("p")
        .close("div");
  }

  /** Openings of a step in words. */
  static String openings(Pack pack, List<String> openings) {
    return openings.stream()
        .map(pack.names()::opening)
        .collect(java.util.stream.Collectors.joining(", "));
  }
}
