package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.Verdict;

/**
 * Whether a kit may be released, with the reasons in plain words.
 *
 * @param releasable whether it may
 * @param reasons what stands against it; empty when nothing does
 * @param marginal marginal checks, each of which needs a named person's reason
 */
public record Standing(boolean releasable, List<String> reasons, List<String> marginal) {
  public Standing {
    reasons = List.copyOf(reasons);
    marginal = List.copyOf(marginal);
  }

  /** The standing of a plan. */
  public static Standing of(Plan plan) {
    List<String> reasons = new ArrayList<>();
    for (Unserved it : plan.unserved()) {
      reasons.add(
          "Not served: " + it.words() + " (" + Figures.builds(it.builds()) + "). " + it.reason());
    }
    for (Check it : plan.checks()) {
      if (it.verdict() == Verdict.FAILS) {
        reasons.add("Check fails: " + inWords(it));
      }
    }
    Map<String, List<String>> open = new LinkedHashMap<>();
    for (Obligation it : plan.proof().obligations()) {
      if (!it.shown()) {
        open.computeIfAbsent(it.detail(), detail -> new ArrayList<>()).add(it.words());
      }
    }
    open.forEach(
        (detail, words) ->
            reasons.add("Not proven: " + String.join("; ", words) + " (" + detail + ")."));
    if (!plan.proof().proven() && plan.proof().obligations().stream().allMatch(Obligation::shown)) {
      reasons.add("Not proven: the proof was not completed.");
    }
    return new Standing(
        plan.releasable(),
        reasons,
        plan.checks().stream()
            .filter(it -> it.verdict() == Verdict.MARGINAL)
            .map(Standing::inWords)
            .toList());
  }

  /** A check in one line, with figure and limit. */
  public static String inWords(Check check) {
    return check.name()
        + ", "
        + check.subject()
        + ": "
        + Figures.figureBeside(check.figure(), check.limit(), check.unit())
        + ", "
        + (check.atMost() ? "at most " : "at least ")
        + Figures.figureBeside(check.limit(), check.figure(), check.unit())
        + (check.atMost() ? " allowed" : " needed");
  }
}
