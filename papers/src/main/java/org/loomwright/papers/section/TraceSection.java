package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** How the figures of the checks were found, close-set, with sources by number. */
final class TraceSection implements Section {
  private static final String GIVEN = "given";

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
        "Under the numbers of the list of checks. A quantity without a formula is given. Numbers in"
            + " square brackets name the sources listed at the end.");
    Map<String, Integer> sources = new LinkedHashMap<>();
    List<Check> checks = ChecksSection.sorted(pack.plan());
    for (int i = 0; i < checks.size(); i++) {
      Check check = checks.get(i);
      html.open("p", "trace")
          .line(
              "b",
              "",
              (i + 1)
                  + " · "
                  + check.name()
                  + ", "
                  + check.subject()
                  + ": "
                  + Figures.figureBeside(check.figure(), check.limit(), check.unit())
                  + ", "
                  + check.verdict().word()
                  + ". ")
          .words(trace(check, sources))
          .close("p");
    }
    if (!sources.isEmpty()) {
      html.line("h2", "", "Sources");
      sources.forEach((source, number) -> html.line("p", "trace", "[" + number + "] " + source));
    }
  }

  private static String trace(Check check, Map<String, Integer> sources) {
    if (check.trace().isEmpty()) {
      return "The figure is given, not worked out.";
    }
    List<String> lines = new ArrayList<>();
    for (TraceLine it : check.trace()) {
      StringBuilder line = new StringBuilder(it.what());
      if (!it.formula().isEmpty() && !it.formula().equals(GIVEN)) {
        line.append(" = ").append(it.formula());
      }
      line.append(" = ").append(Figures.figure(it.value(), it.unit()));
      if (!it.source().isEmpty()) {
        int number = sources.computeIfAbsent(it.source(), source -> sources.size() + 1);
        line.append("\u00A0[").append(number).append(']');
      }
      lines.add(line.toString());
    }
    return String.join(";  ", lines) + ".";
  }
}
