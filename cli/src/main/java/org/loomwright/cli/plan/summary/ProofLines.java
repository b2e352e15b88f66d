package org.loomwright.cli.plan.summary;

import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Proof;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** What the proof covers, or what it could not show with the smallest counterexample. */
final class ProofLines {
  private ProofLines() {}

  static void write(Names names, Screen screen) {
    Proof proof = names.plan().proof();
    long shown = proof.obligations().stream().filter(Obligation::shown).count();
    screen.line(
        (proof.proven() ? "Proof: proven for " : "Proof: NOT PROVEN for ")
            + Figures.builds(proof.builds())
            + ", "
            + shown
            + " of "
            + Summary.counted(proof.obligations().size(), "obligation")
            + " shown");
    for (Obligation it : proof.obligations()) {
      if (!it.shown()) {
        screen.item(
            "-", "not shown: " + it.words() + (it.detail().isEmpty() ? "" : ": ") + it.detail());
        proof.counterexamples().stream()
            .filter(example -> example.obligation().equals(it.id()))
            .findFirst()
            .ifPresent(example -> screen.item(" ", "fails on " + inWords(names, example)));
      }
    }
  }

  private static String inWords(Names names, Counterexample it) {
    return it.words()
        + " ("
        + Figures.builds(it.builds())
        + ")"
        + (it.step().isEmpty() ? "" : ", " + step(names, it.step()))
        + ": "
        + it.what();
  }

  private static String step(Names names, String id) {
    return names
        .plan()
        .guide()
        .step(id)
        .map(step -> "step " + step.number() + " (" + step.title() + ")")
        .orElse(id);
  }
}
