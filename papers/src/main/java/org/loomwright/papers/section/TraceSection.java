package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.NoteList;

/** How the figures of the checks were found, close-set, each way once, with formulas by number. */
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
        "Checks that rest on the same sums stand together, under their numbers in the list of"
            + " checks. Numbers in square brackets name the formulas and sources at the end; a"
            + " quantity without one is given by the documents. What is the same as above in one"
            + " paragraph is not said again.");
    Map<List<TraceLine>, List<String>> checks = new LinkedHashMap<>();
    for (CheckRow row : CheckRow.of(pack.plan())) {
      for (Check check : row.checks()) {
        checks
            .computeIfAbsent(check.trace(), trace -> new ArrayList<>())
            .add(row.number() + " " + check.name() + ", " + pack.names().prose(check.subject()));
      }
    }
    NoteList notes = new NoteList();
    checks.forEach((trace, names) -> paragraph(trace, names, notes, html));
    if (!notes.lines().isEmpty()) {
      html.line("h2", "", "Formulas and sources").open("div", "notes");
      notes.lines().forEach(it -> html.line("p", "trace", it));
      html.close("div");
    }
  }

  private static void paragraph(
      List<TraceLine> trace, List<String> names, NoteList notes, Html html) {
    html.open("p", "trace");
    if (trace.isEmpty()) {
      html.line("b", "", "Checks " + numbers(names) + ". ")
          .words("The figure stands in the documents or is a plain sum of what stands there.");
    } else {
      html.line("b", "", heading(names) + ". ").words(words(trace, notes));
    }
    html.close("p");
  }

  private static String numbers(List<String> names) {
    return names.stream()
        .map(it -> it.substring(0, it.indexOf(' ')))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** The checks, those on one subject without saying it each time. */
  private static String heading(List<String> names) {
    Map<String, Set<String>> bySubject = new LinkedHashMap<>();
    for (String it : names) {
      int comma = it.indexOf(", ");
      bySubject
          .computeIfAbsent(it.substring(comma + 2), key -> new LinkedHashSet<>())
          .add(it.substring(0, comma));
    }
    return bySubject.entrySet().stream()
        .map(it -> Figures.capital(it.getKey()) + ": " + String.join(", ", it.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String words(List<TraceLine> trace, NoteList notes) {
    Set<String> lines = new LinkedHashSet<>();
    for (TraceLine it : trace) {
      String formula = it.formula().equals(GIVEN) ? "" : it.formula();
      String note =
          formula.isEmpty() || it.source().isEmpty()
              ? formula + it.source()
              : formula + ": " + it.source();
      lines.add(
          it.what()
              + " = "
              + Figures.figure(it.value(), it.unit())
              + (note.isEmpty() ? "" : "\u00A0" + notes.mark(note)));
    }
    return String.join("; ", lines) + ".";
  }
}
