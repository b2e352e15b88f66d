package org.loomwright.drawing.strip;

import java.util.List;
import org.loomwright.drawing.LetterWidths;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * A circuit from its source to its load and back, read from left to right in rows. The places are
 * bands behind the parts; where a row ends, a letter tells where the line goes on, the last row at
 * the source again. Same input, same bytes.
 */
public final class CircuitStrip {
  /** Narrowest picture, mm. */
  public static final double LEAST_WIDTH_MM = 90;

  private static final double SIZE = StripCell.SIZE;
  private static final double GAP_MM = 2.5;
  private static final double EDGE_MM = 0.5;
  private static final double MARK_RADIUS_MM = 2.4;
  private static final int LETTERS = 26;

  private CircuitStrip() {}

  /**
   * Draws a circuit.
   *
   * @param circuit what to show
   * @param widthMm width of the picture, 90 mm or more; some 100 mm read well on a phone
   * @param lettering how text is written
   * @throws IllegalArgumentException when the width is too small
   */
  public static String svg(StripCircuit circuit, double widthMm, Lettering lettering) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "a circuit strip of "
              + widthMm
              + " mm is too narrow; give "
              + LEAST_WIDTH_MM
              + " mm or more");
    }
    List<StripRow> out = StripRow.rows(circuit.out(), widthMm - 2 * EDGE_MM);
    List<StripRow> back = StripRow.rows(circuit.back(), widthMm - 2 * EDGE_MM);
    Sheet sheet = new Sheet(lettering);
    int all = out.size() + back.size();
    boolean closed = !back.isEmpty();
    double top =
        draw(sheet, out, "From the source to the load →", 0, all, closed, EDGE_MM, widthMm);
    top = draw(sheet, back, "Back to the source →", out.size(), all, closed, top, widthMm);
    return sheet.svg(widthMm, Math.max(top, 1), "circuit strip: " + circuit.name());
  }

  /** Draws rows under a caption; returns where the next may begin. */
  private static double draw(
      Sheet sheet,
      List<StripRow> rows,
      String caption,
      int before,
      int all,
      boolean closed,
      double from,
      double widthMm) {
    if (rows.isEmpty()) {
      return from;
    }
    List<String> lines = Words.wrap(caption, SIZE, widthMm - 2 * EDGE_MM);
    sheet.lines(Hold.LEFT, StripRow.MARK_MM, from, SIZE, lines);
    double top = from + Words.height(lines, SIZE) + 0.4;
    for (int i = 0; i < rows.size(); i++) {
      StripRow row = rows.get(i);
      row.draw(sheet, top);
      double y = top + row.lineMm();
      // The last row leads back to the source at the first.
      if (before + i > 0 || closed) {
        mark(sheet, y, MARK_RADIUS_MM + EDGE_MM, StripRow.MARK_MM, (before + i + all - 1) % all);
      }
      if (before + i < all - 1 || closed) {
        double right = row.rightMm();
        mark(sheet, y, right + StripRow.MARK_MM - MARK_RADIUS_MM - EDGE_MM, right, before + i);
      }
      top += row.heightMm() + GAP_MM;
    }
    return top;
  }

  /** A letter in a circle, joined to the line by dashes. */
  private static void mark(Sheet sheet, double y, double x, double edge, int number) {
    double near = x + Math.signum(edge - x) * MARK_RADIUS_MM;
    sheet.line("goes-on", new Spot(near, y), new Spot(edge, y), Sheet.INK, 0.5, "1 0.7");
    sheet.circle("goes-on", new Spot(x, y), MARK_RADIUS_MM, "#fff", Sheet.INK, 0.4);
    String letter = letter(number);
    double size = Math.min(SIZE, 1.7 * MARK_RADIUS_MM / LetterWidths.ems(letter));
    sheet.text(Hold.MIDDLE, x, y, size, letter);
  }

  /** A to Z, then A1 to Z1, A2 and on. */
  private static String letter(int number) {
    String letter = Character.toString('A' + number % LETTERS);
    return number < LETTERS ? letter : letter + number / LETTERS;
  }
}
