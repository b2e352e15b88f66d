package org.loomwright.cli.plan.summary;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.Verdict;
import org.loomwright.papers.words.Figures;

/** Whether a kit can be released, in one line. */
final class Verdicts {
  private Verdicts() {}

  static String inWords(Plan plan) {
    if (plan.releasable()) {
      long marginal = count(plan, Verdict.MARGINAL);
      return marginal == 0
          ? "CAN BE RELEASED: every build is served, every check holds, the proof is complete"
          : "CAN BE RELEASED once a named person gives a reason for "
              + (marginal == 1 ? "the marginal check" : "the " + marginal + " marginal checks");
    }
    List<String> against = new ArrayList<>();
    long failing = count(plan, Verdict.FAILS);
    if (failing > 0) {
      against.add(failing == 1 ? "1 check fails" : failing + " checks fail");
    }
    if (!plan.unserved().isEmpty()) {
      BigInteger builds =
          plan.unserved().stream()
              .map(Unserved::builds)
              .max(BigInteger::compareTo)
              .orElse(BigInteger.ZERO);
      // The sets may overlap, so only the largest of them is a sure count.
      against.add(
          (plan.unserved().size() == 1 ? "" : "at least ")
              + Figures.builds(builds)
              + " not served");
    }
    if (!plan.proof().proven()) {
      against.add("the proof is not complete");
    }
    return "NOT RELEASABLE: " + String.join(", ", against);
  }

  static long count(Plan plan, Verdict verdict) {
    return plan.checks().stream().filter(it -> it.verdict() == verdict).count();
  }
}
