package org.loomwright.papers.section;

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
    html.line(
        "p",
        "",
        "Expected time over the mix of vehicles: "
            + Figures.minutes(guide.expectedMinutes())
            + " min. Tools: "
            + (guide.tools().isEmpty() ? "none" : String.join(", ", guide.tools()))
            + ".");
    Optional<Phase> heading = Optional.empty();
    Optional<Step> before = Optional.empty();
    boolean open = false;
    for (Step step : guide.steps()) {
      Phase phase = phases.getOrDefault(step.id(), Phase.FIT);
      boolean newPhase = !heading.equals(Optional.of(phase));
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
      html.close("div");
    }
  }

  /** Openings of a step in words. */
  static String openings(Pack pack, List<String> openings) {
    return openings.stream()
        .map(pack.names()::opening)
        .collect(java.util.stream.Collectors.joining(", "));
  }
}
