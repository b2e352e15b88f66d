package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Shown;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Forks;
import org.loomwright.papers.words.Phase;
import org.loomwright.papers.words.StepFace;

/**
 * One step of the guide on paper.
 *
 * @param pack pack
 * @param forks where steps lead
 */
record StepPage(Pack pack, Forks forks) {
  private static final double FACE_WIDTH_MM = 32;
  private static final double FACE_HEIGHT_MM = 34;

  /**
   * Writes a step.
   *
   * @param before the step printed before it under the same heading; what has not changed since is
   *     not said again
   * @param phase what the heading says
   */
  void write(Step step, Optional<Step> before, Phase phase, Html html) {
    html.open("table", "step", "step-" + step.number())
        .open("tr", "")
        .line("td", "nr", Integer.toString(step.number()))
        .open("td", "box-col");
    if (step.kind() != StepKind.CAUTION && step.ask().isEmpty()) {
      html.tickBox();
    }
    html.close("td").open("td", "");
    forks.reachedFrom(step).ifPresent(it -> html.line("p", "came", it));
    if (step.kind() == StepKind.CAUTION) {
      html.open("div", "caution");
    }
    title(step, html);
    if (!step.why().isEmpty()) {
      html.line("p", "why", step.why());
    }
    if (step.kind() == StepKind.CAUTION) {
      html.close("div");
    }
    undo(step, html);
    if (!step.readings().isEmpty()) {
      new ReadingForm(forks.guide()).write(step, html);
    }
    boolean decided = step.ask().map(ask -> answers(step, ask, html)).orElse(false);
    if (!decided) {
      onward(step, html);
    }
    if (forks.isEnd(step)) {
      html.line("p", "end", "The work ends here.");
    }
    meta(step, before, phase, html);
    html.close("td");
    step.shown().ifPresent(it -> face(it, html));
    html.close("tr").close("table");
  }

  /** A look at what was just done takes one line. */
  private static void title(Step step, Html html) {
    boolean more = !step.text().isEmpty() && !step.text().equals(step.title());
    if (step.kind() == StepKind.CONFIRM) {
      html.open("p", "").line("b", "", step.title() + ".").words(" ");
      if (more) {
        html.words(step.text());
      }
      html.close("p");
      return;
    }
    html.line("p", "title", step.title());
    if (more) {
      html.line("p", "", step.text());
    }
  }

  private static void undo(Step step, Html html) {
    if (step.undo() == Undo.SPECIAL_TOOL) {
      html.line("p", "undo", "Comes out again with a special tool only. Be sure before you do it.");
    } else if (step.undo() == Undo.NOT_AT_ALL) {
      html.line("p", "undo", "This can't be taken back. Be sure before you do it.");
    }
  }

  /** The ways on, as a fork that can be seen from afar. */
  private void onward(Step step, Html html) {
    forks.jump(step).ifPresent(to -> html.line("p", "go", "Go to step\u00A0" + to + "."));
    List<Forks.Way> ways = forks.ways(step);
    if (ways.isEmpty()) {
      return;
    }
    html.open("table", "fork");
    boolean first = true;
    for (Forks.Way way : ways) {
      html.open("tr", "")
          .line("td", "sign", first ? "\u25C6" : "")
          .line("td", "if", "If")
          .line("td", "what", way.words())
          .line("td", "to", goTo(step, way.to()))
          .close("tr");
      first = false;
    }
    html.close("table");
  }

  private static String goTo(Step step, int to) {
    return (to == step.number() + 1 ? "go on with step\u00A0" : "go to step\u00A0") + to;
  }

  /** Answers with what is seen then; true when they say where to go on. */
  private boolean answers(Step step, Ask ask, Html html) {
    Map<String, Integer> targets = forks.byAnswer(step, ask);
    boolean fork = targets.values().stream().anyMatch(to -> to != step.number() + 1);
    html.open("table", fork ? "answers fork" : "answers");
    for (Answer answer : ask.answers()) {
      html.open("tr", "")
          .open("td", "mark")
          .tickBox()
          .close("td")
          .line("td", "what", answer.words())
          .line("td", "", expect(answer));
      Integer to = targets.get(answer.value());
      html.line("td", "to", to == null || !fork ? "" : goTo(step, to)).close("tr");
    }
    html.close("table");
    if (ask.how().isReading()) {
      measured(ask, html);
    }
    return !targets.isEmpty();
  }

  private static String expect(Answer answer) {
    return answer.band().map(Band::words).filter(it -> !answer.expect().contains(it)).isEmpty()
        ? answer.expect()
        : answer.expect() + " (" + answer.band().get().words() + ")";
  }

  private static void measured(Ask ask, Html html) {
    List<Band> bands = ask.answers().stream().flatMap(it -> it.band().stream()).toList();
    String units = bands.stream().map(Band::unit).distinct().collect(Collectors.joining(" or "));
    html.open("p", "form")
        .blank("Measured", 32)
        .words(units.isEmpty() ? "" : units + " ")
        .blank("By", 18);
    html.close("p");
    if (!bands.isEmpty()) {
      html.line(
          "p",
          "",
          "A number outside all of these bands is no answer: measure again, or stop here.");
    }
  }

  private void meta(Step step, Optional<Step> before, Phase phase, Html html) {
    // Whoever comes from elsewhere has not read the step before.
    Optional<Step> known = forks.reachedFrom(step).isPresent() ? Optional.empty() : before;
    List<String> facts = new ArrayList<>();
    if (!step.place().isEmpty() && known.filter(it -> it.place().equals(step.place())).isEmpty()) {
      facts.add("At: " + pack.names().place(step.place()));
    }
    if (!step.openings().isEmpty()
        && known.filter(it -> it.openings().equals(step.openings())).isEmpty()) {
      facts.add("Open: " + GuideSection.openings(pack, step.openings()));
    }
    step.live()
        // The heading says that all of it is done with the battery isolated.
        .filter(live -> live || phase != Phase.FIT)
        .ifPresent(live -> facts.add(live ? "Power: on" : "Power: battery isolated"));
    step.ask().ifPresent(ask -> facts.add(how(ask.how())));
    if (!step.tools().isEmpty()) {
      facts.add("Tools: " + String.join(", ", step.tools()));
    }
    if (step.minutes() > 0) {
      facts.add(Figures.minutes(step.minutes()) + " min");
    }
    if (!facts.isEmpty()) {
      html.line("p", "meta", String.join("  ·  ", facts));
    }
  }

  private static String how(TellHow how) {
    return switch (how) {
      case ASK_OWNER -> "Ask the owner";
      case LOOK -> "Look";
      case MEASURE_LIVE -> "Measure with power on";
      case MEASURE_ISOLATED -> "Measure with the battery isolated";
    };
  }

  private void face(Shown shown, Html html) {
    StepFace.of(pack.names(), shown, FACE_WIDTH_MM, FACE_HEIGHT_MM, pack.lettering())
        .ifPresent(
            it ->
                html.open("td", "view")
                    .picture(it.svg())
                    .line("p", "words", it.words())
                    .close("td"));
  }
}
