package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Verdict;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.NoteList;

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
    html.line("p", "", summary(pack.plan().checks()));
    NoteList notes = new NoteList();
    List<CheckRow> rows = CheckRow.of(pack.plan());
    html.table(
        List.of(
            Column.key("No.", 4),
            Column.key("Verdict", 9),
            Column.text("Check", 30),
            Column.text("On", 18),
            Column.text("In case", 8),
            Column.number("Figure", 10.5),
            Column.number("Limit", 12),
            Column.number("Margin", 8.5)),
        rows.stream().filter(it -> !it.quiet()).map(it -> row(pack, it, notes)).toList());
    List<CheckRow> quiet = rows.stream().filter(CheckRow::quiet).toList();
    if (!quiet.isEmpty()) {
      html.line("h2", "", "Ratings, sizes and counts that fit")
          .table(
              List.of(
                  Column.key("No.", 4),
                  Column.text("Check", 42),
                  Column.text("On", 22),
                  Column.text("In case", 9),
                  Column.number("Figure", 11),
                  Column.number("Limit", 12)),
              quiet.stream().map(it -> withoutMargin(row(pack, it, notes))).toList());
    }
    if (!notes.lines().isEmpty()) {
      html.line("h2", "", "Where the limits come from").open("div", "notes");
      notes.lines().forEach(it -> html.line("p", "trace", it));
      html.close("div");
    }
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
        + " Each figure is the worst over all cases. Checks with the same figure and limit share a"
        + " line. Numbers in square brackets say below where a limit comes from.";
  }

  private static long count(List<Check> checks, Verdict verdict) {
    return checks.stream().filter(it -> it.verdict() == verdict).count();
  }

  private static List<String> row(Pack pack, CheckRow row, NoteList notes) {
    Check it = row.first();
    return List.of(
        Integer.toString(row.number()),
        verdict(it.verdict()),
        it.name() + (it.source().isEmpty() ? "" : "\u00A0" + notes.mark(it.source())),
        row.subjects(pack.names()),
        String.join(", ", it.cases()),
        Figures.figureBeside(it.figure(), it.limit(), it.unit()),
        (it.atMost() ? "≤\u00A0" : "≥\u00A0")
            + Figures.figureBeside(it.limit(), it.figure(), it.unit()),
        Figures.margin(it.margin()));
  }

  // All of them hold, and what comes in steps has no margin to speak of.
  private static List<String> withoutMargin(List<String> row) {
    List<String> kept = new ArrayList<>(row);
    kept.remove(row.size() - 1);
    kept.remove(1);
    return kept;
  }

  static String verdict(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "\u2713 holds";
      case MARGINAL -> "\u25B2 marginal";
      case FAILS -> "\u2715 FAILS";
    };
  }
}
