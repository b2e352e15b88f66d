package org.loomwright.drawing.chart;

import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Figure;
import org.loomwright.drawing.ink.Hatch;
import org.loomwright.drawing.ink.Labels;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * Figures as bars against their limits, a row each: heat of leads, drop of needs. The limit is a
 * mark with a head, the marginal band before it is shaded, the verdict stands as a word. Same
 * input, same bytes.
 *
 * <p>The caller cuts many rows into pages: a picture is {@link #headMm} higher than its rows.
 */
public final class Bars {
  /** Narrowest picture, mm. */
  public static final double LEAST_WIDTH_MM = 90;

  private static final double SIZE = 2.6;
  private static final double EDGE_MM = 0.5;

  /** Figures at the axis and the gap under them. */
  private static final double AXIS_MM = 5.4;

  private static final double BAR_MM = 3.6;
  private static final double PAD_MM = 1.5;
  private static final double GAP_MM = 2.5;
  private static final double NAMES = 0.32;
  private static final double VERDICTS = 0.27;
  private static final double HATCH_MM = 1.4;
  private static final String BAND = "#cfcfcf";

  private Bars() {}

  /**
   * Height of the title and the axis above the rows, mm.
   *
   * @param widthMm width of the picture, 90 mm or more
   */
  public static double headMm(BarScale scale, double widthMm) {
    return Words.height(title(scale, widthMm), SIZE) + AXIS_MM;
  }

  private static List<String> title(BarScale scale, double widthMm) {
    return Words.wrap(scale.quantity() + " in " + scale.unit(), SIZE, widthMm - 2 * EDGE_MM);
  }

  /**
   * Height of a row, mm; more for a name or verdict of several lines.
   *
   * @param widthMm width of the picture, 90 mm or more
   */
  public static double rowHeightMm(BarRow row, BarScale scale, double widthMm) {
    Columns columns = Columns.of(widthMm);
    double lines =
        Math.max(
            Words.height(columns.name(row), SIZE), Words.height(columns.verdict(row, scale), SIZE));
    return Math.max(lines, BAR_MM + 2) + 2 * PAD_MM;
  }

  /**
   * Draws rows.
   *
   * @param rows rows of one page, in order
   * @param scale axis of all rows
   * @param widthMm width of the picture, 90 mm or more; some 100 mm read well on a phone
   * @param lettering how text is written
   * @throws IllegalArgumentException when the width is too small
   */
  public static String svg(List<BarRow> rows, BarScale scale, double widthMm, Lettering lettering) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "bars of " + widthMm + " mm are too narrow; give " + LEAST_WIDTH_MM + " mm or more");
    }
    Columns columns = Columns.of(widthMm);
    Sheet sheet = new Sheet(lettering);
    double top = headMm(scale, widthMm);
    double height = top + rows.stream().mapToDouble(it -> rowHeightMm(it, scale, widthMm)).sum();
    sheet.lines(Hold.LEFT, EDGE_MM, 0, SIZE, title(scale, widthMm));
    axis(sheet, columns, scale, top, height);
    for (BarRow row : rows) {
      double high = rowHeightMm(row, scale, widthMm);
      row(sheet, columns, scale, row, top, high);
      top += high;
    }
    return sheet.svg(widthMm, height, scale.quantity() + " against limits");
  }

  /** Three columns: name, bar, verdict; edges in mm. */
  private record Columns(double names, double left, double right, double verdicts, double end) {
    static Columns of(double widthMm) {
      double left = NAMES * widthMm;
      double verdicts = (1 - VERDICTS) * widthMm;
      return new Columns(EDGE_MM, left, verdicts - GAP_MM, verdicts, widthMm - EDGE_MM);
    }

    double at(BarScale scale, double value) {
      return left + scale.share(value) * (right - left);
    }

    List<String> name(BarRow row) {
      return Words.wrap(row.name(), SIZE, left - GAP_MM - names);
    }

    List<String> verdict(BarRow row, BarScale scale) {
      String figure =
          row.figure().isPresent()
              ? Figure.of(row.figure().getAsDouble()) + " of "
              : "not known, limit ";
      return Words.wrap(
          figure + Figure.of(row.limit()) + " " + scale.unit() + ": " + row.verdict(),
          SIZE,
          end - verdicts);
    }
  }

  private static void axis(
      Sheet sheet, Columns columns, BarScale scale, double head, double height) {
    Labels strip = new Labels(new Box(0, 0, columns.end(), head), List.of());
    double y = head - 3;
    for (double value : scale.marks()) {
      double x = columns.at(scale, value);
      String words = Figure.of(value);
      Box room = Sheet.room(Hold.MIDDLE, x, y, SIZE, words);
      sheet.line("grid", new Spot(x, head - 1), new Spot(x, height), "#aaa", 0.15, "");
      if (strip.place(List.of(room)).isPresent()) {
        sheet.text(Hold.MIDDLE, x, y, SIZE, words);
      }
    }
  }

  private static void row(
      Sheet sheet, Columns columns, BarScale scale, BarRow row, double top, double high) {
    double middle = top + high / 2;
    sheet.line(
        "rule", new Spot(columns.names(), top), new Spot(columns.end(), top), "#999", 0.15, "");
    List<String> name = columns.name(row);
    sheet.lines(Hold.LEFT, columns.names(), middle - Words.height(name, SIZE) / 2, SIZE, name);
    double limit = columns.at(scale, row.limit());
    double marginal = columns.at(scale, row.marginalFrom());
    double barTop = middle - BAR_MM / 2;
    double barBottom = middle + BAR_MM / 2;
    if (limit > marginal) {
      sheet.rect(
          "marginal", new Box(marginal, barTop - 1.3, limit, barBottom + 1.3), BAND, "none", 0);
    }
    if (row.figure().isPresent()) {
      bar(sheet, columns, scale, row, barTop, barBottom);
    }
    sheet.line(
        "limit", new Spot(limit, barTop - 1.3), new Spot(limit, barBottom + 1.3), "#fff", 1.1, "");
    sheet.line(
        "limit",
        new Spot(limit, barTop - 1.3),
        new Spot(limit, barBottom + 1.3),
        Sheet.INK,
        0.7,
        "");
    sheet.polygon(
        "limit-head",
        List.of(
            new Spot(limit - 1.1, barTop - 2.3),
            new Spot(limit + 1.1, barTop - 2.3),
            new Spot(limit, barTop - 0.7)),
        Sheet.INK,
        "none",
        0);
    List<String> verdict = columns.verdict(row, scale);
    sheet.lines(
        Hold.LEFT, columns.verdicts(), middle - Words.height(verdict, SIZE) / 2, SIZE, verdict);
  }

  private static void bar(
      Sheet sheet, Columns columns, BarScale scale, BarRow row, double top, double bottom) {
    double figure = row.figure().orElseThrow();
    Box bar = new Box(columns.left(), top, columns.at(scale, figure), bottom);
    String fill = row.state() == BarRow.State.FAILS ? "#222" : "#fff";
    sheet.rect("bar", bar, fill, Sheet.INK, 0.35);
    if (row.state() == BarRow.State.MARGINAL) {
      List<Spot> corners =
          List.of(
              new Spot(bar.left(), top),
              new Spot(bar.right(), top),
              new Spot(bar.right(), bottom),
              new Spot(bar.left(), bottom));
      sheet.path("marginal-bar", Hatch.of(corners, bar, HATCH_MM), Sheet.INK, 0.35, "");
    }
    if (figure > scale.to()) {
      // Two slanted cuts: the bar goes on beyond the axis.
      for (double x = bar.right() - 3.4; x < bar.right() - 1; x += 1.8) {
        sheet.line(
            "broken", new Spot(x, bottom + 0.6), new Spot(x + 1.2, top - 0.6), "#fff", 1.1, "");
      }
    }
  }
}
