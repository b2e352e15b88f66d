package org.loomwright.cli.sum;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import org.loomwright.physics.Check;
import org.loomwright.physics.TraceLine;

/**
 * Writes an answer for people: the figures, the checks, how they were reached, and at the end what
 * the numbers in brackets stand for, so that lines stay short.
 */
final class PlainAnswer {

  /** Characters of a formula on one line, where its constants let it be broken. */
  private static final int WIDEST_FORMULA = 72;

  private final StringBuilder text = new StringBuilder();
  private final List<String> notes = new ArrayList<>();

  private PlainAnswer() {}

  static String of(Answer answer) {
    PlainAnswer plain = new PlainAnswer();
    plain.table(
        "",
        answer.figures().stream().map(figure -> List.of(figure.what(), figure.shown())).toList());
    if (!answer.checks().isEmpty()) {
      plain.text.append("\nChecks\n");
      plain.table("  ", answer.checks().stream().map(plain::cells).toList());
    }
    for (Answer.Way way : answer.ways()) {
      plain.text.append('\n').append(way.title()).append('\n');
      // Two figures of one sum often rest on the same lines; once is enough.
      LinkedHashSet<TraceLine> lines = new LinkedHashSet<>(way.trace().lines());
      plain.table("  ", lines.stream().flatMap(it -> plain.rows(it).stream()).toList());
    }
    plain.printNotes();
    return plain.text.toString();
  }

  private List<String> cells(Check check) {
    return List.of(
        check.verdict().name().toLowerCase(Locale.ROOT),
        check.name(),
        Amounts.of(check.value(), check.unit()),
        "limit " + Amounts.of(check.limit(), check.unit()),
        note(check.rule() + "; " + check.source()));
  }

  /** A line; the constants of a long formula go on below it. */
  private List<List<String>> rows(TraceLine line) {
    List<List<String>> rows = new ArrayList<>();
    String value = Amounts.of(line.value(), line.unit());
    String source = line.source().isEmpty() ? "" : note(line.source());
    StringBuilder part = new StringBuilder();
    for (String words : line.formula().split("(?<=, )")) {
      if (part.length() > 0 && part.length() + words.length() > WIDEST_FORMULA) {
        rows.add(row(rows.isEmpty() ? line.what() : "", rows.isEmpty() ? value : "", part, source));
        source = "";
        part.setLength(0);
      }
      part.append(words);
    }
    rows.add(row(rows.isEmpty() ? line.what() : "", rows.isEmpty() ? value : "", part, source));
    return rows;
  }

  private static List<String> row(String what, String value, StringBuilder formula, String source) {
    return List.of(what, value, formula.toString().strip(), source);
  }

  /** The number of a note; the same words get the same number. */
  private String note(String words) {
    if (!notes.contains(words)) {
      notes.add(words);
    }
    return "[" + (notes.indexOf(words) + 1) + "]";
  }

  private void printNotes() {
    if (notes.isEmpty()) {
      return;
    }
    text.append("\nRules and sources\n");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < notes.size(); i++) {
      rows.add(List.of("[" + (i + 1) + "]", notes.get(i)));
    }
    table("  ", rows);
  }

  /** Rows in columns just wide enough, without blanks at the ends of lines. */
  private void table(String indent, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return;
    }
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int column = 0; column < widths.length; column++) {
        widths[column] = Math.max(widths[column], row.get(column).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int column = 0; column < widths.length; column++) {
        String cell = row.get(column);
        line.append(cell).append(" ".repeat(widths[column] - cell.length() + 2));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
