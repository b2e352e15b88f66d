package org.loomwright.papers.section;

import java.util.Comparator;
import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** All checks, the worst first. */
final class ChecksSection implements Section {
  @Override
  public String id() {
    return "checks";
  }

  @Override
  public String title() {
    return "Checks";
  }

  @Override
  public void write(Pack pack, Html html) {
    List<Check> checks = sorted(pack.plan());
    html.line("p", "", summary(checks));
    html.table(
        List.of(
            Column.key("No.", 4),
            Column.key("Verdict", 10.5),
            Column.text("Check, and where its limit comes from", 38),
            Column.text("On", 16),
            Column.text("In case", 6),
            Column.number("Figure", 9),
            Column.number("Limit", 9.5),
            Column.number("Margin", 7)),
        java.util.stream.IntStream.range(0, checks.size())
            .mapToObj(i -> row(i + 1, checks.get(i)))
            .toList());
  }

  /** Failing, marginal, holding; within each the smallest margin first. */
  static List<Check> sorted(Plan plan) {
    return plan.checks().stream()
        .sorted(
            Comparator.comparing(Check::verdict)
                .reversed()
                .thenComparingDouble(Check::margin)
                .thenComparing(Check::id))
        .toList();
  }

  private static String summary(List<Check> checks) {
    long fails = count(checks, Verdict.FAILS);
    long marginal = count(checks, Verdict.MARGINAL);
    long holds = count(checks, Verdict.HOLDS);
    return fails
        + (fails == 1 ? " fails, " : " fail, ")
        + marginal
        + (marginal == 1 ? " is marginal, " : " are marginal, ")
        + holds
        + (holds == 1 ? " holds." : " hold.")
        + " Each figure is the worst over all cases.";
  }

  private static long count(List<Check> checks, Verdict verdict) {
    return checks.stream().filter(it -> it.verdict() == verdict).count();
  }

  private static List<String> row(int number, Check it) {
    return List.of(
        Integer.toString(number),
        verdict(it.verdict()),
        it.name() + "\n" + it.source(),
        it.subject(),
        String.join(", ", it.cases()),
        Figures.figureBeside(it.figure(), it.limit(), it.unit()),
        (it.atMost() ? "≤ " : "≥ ") + Figures.figureBeside(it.limit(), it.figure(), it.unit()),
        Figures.margin(it.margin()));
  }

  static String verdict(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "\u2713 holds";
      case MARGINAL -> "\u25B2 marginal";
      case FAILS -> "\u2715 FAILS";
    };
  }
}
