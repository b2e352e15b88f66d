package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.LetterWidths;
import org.loomwright.drawing.Lettering;

/**
 * A table beside an end: its name, what it is, and a row for each lead. As wide as its words need,
 * up to a limit at which long words go on in the next line.
 */
final class EndTable {
  private static final double NAME_MM = 4.2;
  private static final double SUB_MM = 2.8;
  private static final double HEAD_MM = 2.5;
  private static final double ROW_MM = 3.2;
  private static final double NOTE_MM = 2.8;
  private static final double PAD_MM = 1.2;

  /** From line to line over the font size. */
  private static final double LEADING = 1.4;

  /** Between a row's last line and the rule below it. */
  private static final double ROW_GAP_MM = 0.4;

  private static final double LEAST_MM = 40;

  private final Lettering lettering = Lettering.fitted();
  private final StringBuilder svg = new StringBuilder();
  private double yMm = PAD_MM;

  private EndTable() {}

  /**
   * A row.
   *
   * @param cells a cell for each column
   * @param note a line below the cells; empty for none
   */
  record Row(List<String> cells, String note) {
    Row {
      cells = List.copyOf(cells);
    }
  }

  /** A table as drawn. */
  record Drawn(String svg, double widthMm, double heightMm) {}

  /**
   * Draws a table.
   *
   * @param mostMm widest table wanted, mm
   */
  static Drawn of(
      String name, List<String> subs, List<String> heads, List<Row> rows, double mostMm) {
    return new EndTable().draw(name, subs, heads, rows, mostMm);
  }

  private Drawn draw(
      String name, List<String> subs, List<String> heads, List<Row> rows, double mostMm) {
    double[] columns = columns(heads, rows, mostMm);
    double width = LEAST_MM;
    double sum = 0;
    for (double column : columns) {
      sum += column;
    }
    width = Math.max(width, sum);
    for (String sub : subs) {
      width = Math.max(width, Math.min(mostMm, wide(sub, SUB_MM)));
    }
    width = Math.max(width, Math.min(0.8 * mostMm, wide(name, NAME_MM)));
    // The last column takes what is over.
    columns[columns.length - 1] += width - sum;

    List<Double> rules = new ArrayList<>();
    left(name, 0, width, NAME_MM);
    subs.forEach(sub -> left(sub, 0, columnsWidth(columns), SUB_MM));
    rules.add(yMm);
    cells(heads, columns, HEAD_MM);
    rules.add(yMm);
    for (Row row : rows) {
      cells(row.cells(), columns, ROW_MM);
      if (!row.note().isEmpty()) {
        left("▸ " + row.note(), columns[0], width - columns[0], NOTE_MM);
      }
      yMm += ROW_GAP_MM;
      rules.add(yMm);
    }
    double height = yMm + ROW_GAP_MM;
    StringBuilder all = new StringBuilder();
    all.append(rect(width, height));
    for (double rule : rules.subList(0, rules.size() - 1)) {
      all.append(line(0.2, rule, width - 0.2, rule, 0.2));
    }
    double x = 0;
    for (int i = 0; i + 1 < columns.length; i++) {
      x += columns[i];
      all.append(line(x, rules.get(0), x, rules.get(1), 0.2));
    }
    return new Drawn(all.append(svg).toString(), width, height);
  }

  private static double columnsWidth(double[] columns) {
    double sum = 0;
    for (double column : columns) {
      sum += column;
    }
    return sum;
  }

  private static double[] columns(List<String> heads, List<Row> rows, double mostMm) {
    double[] columns = new double[heads.size()];
    double sum = 0;
    for (int i = 0; i < columns.length; i++) {
      columns[i] = wide(heads.get(i), HEAD_MM);
      for (Row row : rows) {
        columns[i] = Math.max(columns[i], wide(row.cells().get(i), ROW_MM));
      }
      sum += columns[i];
    }
    // Where that is too wide, the widest columns give way until all fits.
    while (sum > mostMm) {
      int widest = 0;
      for (int i = 1; i < columns.length; i++) {
        widest = columns[i] > columns[widest] ? i : widest;
      }
      if (columns[widest] <= 8) {
        break;
      }
      columns[widest] -= 1;
      sum -= 1;
    }
    return columns;
  }

  private static double wide(String words, double sizeMm) {
    return LetterWidths.ems(words) * sizeMm + 2 * PAD_MM;
  }

  private void cells(List<String> cells, double[] columns, double sizeMm) {
    double top = yMm;
    double bottom = yMm;
    double x = 0;
    for (int i = 0; i < columns.length; i++) {
      yMm = top;
      left(cells.get(i), x, columns[i], sizeMm);
      bottom = Math.max(bottom, yMm);
      x += columns[i];
    }
    yMm = bottom;
  }

  /** Lines of text from the left edge of a room, at the height reached; moves that on. */
  private void left(String words, double leftMm, double roomMm, double sizeMm) {
    for (String line : lines(words, roomMm - 2 * PAD_MM, sizeMm)) {
      double middle = leftMm + PAD_MM + LetterWidths.ems(line) * sizeMm / 2;
      if (!line.isEmpty()) {
        svg.append(lettering.line(middle, yMm + LEADING * sizeMm / 2, sizeMm, "#111", line));
      }
      yMm += LEADING * sizeMm;
    }
  }

  /** Breaks words into lines; a word longer than a line is broken too. */
  static List<String> lines(String words, double roomMm, double sizeMm) {
    double room = Math.max(roomMm, 2 * sizeMm) + 1e-6;
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (LetterWidths.ems(longer) * sizeMm <= room) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = "";
      for (int character : word.codePoints().toArray()) {
        String more = line + Character.toString(character);
        if (LetterWidths.ems(more) * sizeMm > room && !line.isEmpty()) {
          lines.add(line);
          more = Character.toString(character);
        }
        line = more;
      }
    }
    lines.add(line);
    return lines;
  }

  private static String rect(double width, double height) {
    return "<rect class=\"table\" x=\"0.2\" y=\"0.2\" width=\""
        + EndSymbols.number(width - 0.4)
        + "\" height=\""
        + EndSymbols.number(height - 0.4)
        + "\" fill=\"#fff\" stroke=\"#111\" stroke-width=\"0.35\"/>";
  }

  private static String line(double x1, double y1, double x2, double y2, double strokeMm) {
    return EndSymbols.path(
        "M"
            + EndSymbols.number(x1)
            + ","
            + EndSymbols.number(y1)
            + "L"
            + EndSymbols.number(x2)
            + ","
            + EndSymbols.number(y2),
        "none",
        strokeMm);
  }
}
