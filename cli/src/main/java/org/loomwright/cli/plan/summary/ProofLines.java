package org.loomwright.cli.plan.summary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Proof;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** What the proof covers, or what it could not show with the smallest counterexample. */
final class ProofLines {
  private static final int MOST_OBLIGATIONS = 4;

  private final Names names;
  private final Proof proof;
  private final String rest;

  ProofLines(Names names, String rest) {
    this.names = names;
    this.proof = names.plan().proof();
    this.rest = rest;
  }

  void write(Screen screen) {
    long shown = proof.obligations().stream().filter(Obligation::shown).count();
    screen.line(
        (proof.proven()
                ? "Proof: proven for " + Figures.builds(proof.builds()) + ", "
                : "Proof: NOT PROVEN, ")
            + shown
            + " of "
            + Summary.counted(proof.obligations().size(), "obligation")
            + " shown");
    // One fault of the guide can stand in the way of many obligations; it is said once.
    Map<String, List<Obligation>> open = new LinkedHashMap<>();
    for (Obligation it : proof.obligations()) {
      if (!it.shown()) {
        open.computeIfAbsent(reason(it), reason -> new ArrayList<>()).add(it);
      }
    }
    Cut<String> reasons = Cut.of(List.copyOf(open.keySet()), MOST_OBLIGATIONS, rest);
    for (String reason : reasons.shown()) {
      List<Obligation> obligations = open.getOrDefault(reason, List.of());
      screen.item(
          "-",
          "not shown: "
              + obligations.get(0).words()
              + (obligations.size() > 1 ? " (and " + (obligations.size() - 1) + " more)" : "")
              + (reason.isEmpty() ? "" : ": " + reason));
    }
    reasons.more().ifPresent(words -> screen.item("…", words));
  }

  private String reason(Obligation obligation) {
    return proof.counterexamples().stream()
        .filter(example -> example.obligation().equals(obligation.id()))
        .findFirst()
        .map(this::inWords)
        .orElse(obligation.detail());
  }

  private String inWords(Counterexample it) {
    return "fails on "
        + it.words()
        + " ("
        + Figures.builds(it.builds())
        + ")"
        + (it.step().isEmpty() ? "" : ", " + step(it.step()))
        + ": "
        + it.what();
  }

  private String step(String id) {
    return names
        .plan()
        .guide()
        .step(id)
        .map(step -> "step " + step.number() + " (" + step.title() + ")")
        .orElseGet(() -> names.step(id));
  }
}
