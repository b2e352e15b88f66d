package org.loomwright.papers.section;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Proof;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** What was proven, and counterexamples where it was not. */
final class ProofSection implements Section {
  @Override
  public String id() {
    return "proof";
  }

  @Override
  public String title() {
    return "Proof";
  }

  @Override
  public Layout layout() {
    return Layout.FLOW;
  }

  @Override
  public void write(Pack pack, Html html) {
    Proof proof = pack.plan().proof();
    html.line(
        "p",
        "lead",
        proof.proven()
            ? "Every one of the "
                + Figures.builds(proof.builds())
                + " that are possible was walked through the guide, in groups. All obligations are"
                + " shown."
            : "The walk of "
                + Figures.builds(proof.builds())
                + " through the guide did not show all obligations. This kit is not proven.");
    for (Counterexample it : proof.counterexamples()) {
      counterexample(pack, it, html);
    }
    html.line("h2", "", "Obligations");
    html.table(
        List.of(
            Column.key("Result", 13),
            Column.text("What had to be shown", 47),
            Column.text("Detail", 40)),
        proof.obligations().stream()
            .map(
                it ->
                    List.of(
                        it.shown() ? "\u2713 shown" : "\u2715 NOT SHOWN", it.words(), it.detail()))
            .toList());
    html.line("h2", "", "Where builds end in the guide");
    html.table(
        List.of(
            Column.key("Last step", 12),
            Column.text("Cases", 20),
            Column.text("Vehicles", 54),
            Column.number("Builds", 14)),
        proof.leaves().stream()
            .map(
                it ->
                    List.of(
                        pack.names().step(it.step()),
                        String.join(", ", it.cases()),
                        it.words(),
                        Figures.count(it.builds())))
            .toList());
  }

  private static void counterexample(Pack pack, Counterexample it, Html html) {
    String obligation =
        pack.plan().proof().obligations().stream()
            .filter(other -> other.id().equals(it.obligation()))
            .map(other -> other.words())
            .findFirst()
            .orElse(it.obligation());
    html.open("div", "box grave")
        .line("p", "title", "Counterexample: " + pack.names().prose(it.what()))
        .line("p", "", "Vehicles: " + it.words() + " (" + Figures.builds(it.builds()) + ").")
        .line(
            "p",
            "",
            it.step().isEmpty()
                ? "No single step is to blame."
                : "At " + pack.names().step(it.step()) + " of the guide.")
        .line("p", "", "What it breaks: " + obligation + ".");
    if (!it.traits().isEmpty()) {
      html.line(
          "p",
          "",
          "Traits: "
              + it.traits().entrySet().stream()
                  .map(trait -> trait.getKey() + " = " + trait.getValue())
                  .collect(Collectors.joining(", "))
              + ".");
    }
    html.close("div");
  }
}
