package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** How the figures of the checks were found. */
final class TraceSection implements Section {
  private static final List<Column> COLUMNS =
      List.of(Column.text("", 27), Column.text("", 30), Column.number("", 15), Column.text("", 28));

  @Override
  public String id() {
    return "trace";
  }

  @Override
  public String title() {
    return "How the figures were found";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "Under the numbers of the list of checks: quantity, formula, value, and where they come"
            + " from.");
    List<Check> checks = ChecksSection.sorted(pack.plan());
    for (int i = 0; i < checks.size(); i++) {
      Check check = checks.get(i);
      html.open("div", check.trace().size() <= 12 ? "keep" : "")
          .line(
              "h3",
              "",
              (i + 1)
                  + " · "
                  + check.name()
                  + ", "
                  + check.subject()
                  + ": "
                  + Figures.figureBeside(check.figure(), check.limit(), check.unit())
                  + ", "
                  + check.verdict().word());
      if (check.trace().isEmpty()) {
        html.line("p", "note", "The figure is given, not worked out.");
      } else {
        html.table("small", COLUMNS, check.trace().stream().map(TraceSection::row).toList());
      }
      html.close("div");
    }
  }

  private static List<String> row(TraceLine it) {
    return List.of(it.what(), it.formula(), Figures.figure(it.value(), it.unit()), it.source());
  }
}
