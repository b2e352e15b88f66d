package org.loomwright.cli.plan.summary;

import java.util.Comparator;
import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.papers.words.Standing;

/** How many checks hold, and each that does not hold well with figure, limit, margin and source. */
final class CheckLines {
  private static final int MOST_CHECKS = 8;

  private CheckLines() {}

  static void write(Plan plan, String rest, Screen screen) {
    screen.heading(
        "Checks: "
            + Verdicts.count(plan, Verdict.HOLDS)
            + " hold, "
            + Verdicts.count(plan, Verdict.MARGINAL)
            + " marginal, "
            + Verdicts.count(plan, Verdict.FAILS)
            + " fail");
    List<Check> grave =
        plan.checks().stream()
            .filter(it -> it.verdict() != Verdict.HOLDS)
            .sorted(
                Comparator.comparing(Check::verdict)
                    .reversed()
                    .thenComparingDouble(Check::margin)
                    .thenComparing(Check::id))
            .toList();
    Cut<Check> checks = Cut.of(grave, MOST_CHECKS, rest);
    screen.rows(1, checks.shown().stream().map(CheckLines::row).toList());
    checks.more().ifPresent(words -> screen.item("…", words));
  }

  private static List<String> row(Check it) {
    return List.of(
        it.verdict() == Verdict.FAILS ? "FAILS" : it.verdict().word(),
        Standing.inWords(it)
            // A share of nothing says nothing.
            + (it.limit() == 0 ? "" : ", margin " + Figures.margin(it.margin()))
            + (it.cases().isEmpty() ? "" : ", worst in " + Names.cases(it.cases()))
            + " ["
            + Short.source(it.source())
            + "]");
  }
}
