package org.loomwright.drawing.strip;

import java.util.List;
import org.loomwright.drawing.Svg;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Spot;

/**
 * Draws the symbols on a level line.
 *
 * @param sheet what is drawn on
 * @param y height of the line, mm
 * @param from where the cell begins, mm
 * @param to where it ends, mm
 */
record SymbolPen(Sheet sheet, double y, double from, double to) {
  /** Farthest that a symbol reaches above or below the line, mm. */
  static final double REACH_MM = 5;

  private static final double LINE = 0.5;
  private static final double BOLD = 1;

  void wire() {
    line("lead", from, y, to, y, BOLD);
  }

  void draw(Symbol symbol) {
    double x = (from + to) / 2;
    switch (symbol) {
      case BATTERY -> battery(x);
      case FUSE -> {
        ends(x, 0);
        box("fuse", x, 3.6, 1.3, "none");
      }
      case CONTACT_PAIR -> contactPair(x);
      case SWITCH -> {
        ends(x, 2.6);
        line("switch", x - 2.6, y, x + 2.4, y - 2.6, LINE);
      }
      case SPLICE -> {
        ends(x, 0);
        sheet.circle("splice", new Spot(x, y), 1, Sheet.INK, "none", 0);
      }
      case GROUND_POINT -> ground(x);
      case BODY -> body();
      case LOAD -> {
        ends(x, 3.6);
        box("resistor", x, 3.6, 1.5, "#fff");
      }
      case UNIT -> {
        ends(x, 3);
        box("unit", x, 3, 3, "#fff");
      }
    }
  }

  /** The line from both ends of the cell up to a distance from its middle. */
  private void ends(double x, double half) {
    line("line", from, y, x - half, y, LINE);
    line("line", x + half, y, to, y, LINE);
  }

  private void battery(double x) {
    ends(x, 0.8);
    line("minus", x - 0.8, y - 1.7, x - 0.8, y + 1.7, 1.1);
    line("plus", x + 0.8, y - 3.6, x + 0.8, y + 3.6, LINE);
    // The sign of the positive pole, as strokes.
    line("sign", x + 2.2, y - 2.6, x + 4.2, y - 2.6, 0.35);
    line("sign", x + 3.2, y - 3.6, x + 3.2, y - 1.6, 0.35);
  }

  private void contactPair(double x) {
    double left = x + 0.2;
    line("line", from, y, x - 2.6, y, LINE);
    line("line", left + 2, y, to, y, LINE);
    sheet.rect("plug", new Box(x - 2.6, y - 0.7, x + 0.6, y + 0.7), Sheet.INK, "none", 0);
    sheet.curve(
        "socket",
        "M"
            + number(left)
            + ","
            + number(y - 2)
            + "A2 2 0 0 1 "
            + number(left)
            + ","
            + number(y + 2),
        "none",
        Sheet.INK,
        LINE,
        "");
  }

  private void ground(double x) {
    ends(x, 0);
    sheet.circle("stud", new Spot(x, y), 0.7, Sheet.INK, "none", 0);
    line("stem", x, y, x, y + 2.4, LINE);
    line("bar", x - 2.6, y + 2.4, x + 2.6, y + 2.4, LINE);
    for (int i = -1; i <= 1; i++) {
      double top = x + i * 2.2;
      line("stroke", top, y + 2.4, top - 1.4, y + 4.6, 0.4);
    }
  }

  private void body() {
    line("body", from, y - 0.8, to, y - 0.8, LINE);
    line("body", from, y + 0.8, to, y + 0.8, LINE);
    for (double x = from + 1.6; x + 0.8 < to; x += 2.4) {
      line("stroke", x, y + 0.8, x + 1, y - 0.8, 0.3);
    }
  }

  private void box(String name, double x, double halfWide, double halfHigh, String fill) {
    sheet.rect(
        name,
        new Box(x - halfWide, y - halfHigh, x + halfWide, y + halfHigh),
        fill,
        Sheet.INK,
        LINE);
  }

  private void line(String name, double fromX, double fromY, double toX, double toY, double width) {
    sheet.path(
        name,
        List.of(new Segment(new Spot(fromX, fromY), new Spot(toX, toY))),
        Sheet.INK,
        width,
        "");
  }

  private static String number(double value) {
    return Svg.number(value);
  }
}
