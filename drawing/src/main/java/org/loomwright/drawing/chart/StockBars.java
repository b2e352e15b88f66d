package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Hatch;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * Spools or bars as they are cut: a bar for each way of cutting, its pieces side by side to scale,
 * what is left hatched. Same input, same bytes.
 */
public final class StockBars {
  private static final double SIZE = 2.8;
  private static final double BAR_MM = 6;
  private static final double ROW_MM = 14;
  private static final double HATCH_MM = 1.3;
  private static final double EDGE_MM = 0.6;

  private StockBars() {}

  /**
   * A way of cutting.
   *
   * @param words how often it is cut and what comes off it
   * @param pieces pieces in order
   * @param restMm what is left at the end, mm
   */
  public record Bar(String words, List<Piece> pieces, double restMm) {
    /** Copies the pieces. */
    public Bar {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A piece.
   *
   * @param words its length in words
   * @param lengthMm its length, mm
   */
  public record Piece(String words, double lengthMm) {}

  /**
   * Draws bars under each other.
   *
   * @param title what it is about
   * @param stockMm length of the stock, mm, above zero
   * @param kerfMm length lost between two pieces, mm
   */
  public static String svg(
      String title,
      double stockMm,
      double kerfMm,
      List<Bar> bars,
      double widthMm,
      Lettering lettering) {
    Sheet sheet = new Sheet(lettering);
    double scale = (widthMm - 2 * EDGE_MM) / stockMm;
    double top = EDGE_MM;
    for (Bar bar : bars) {
      List<String> lines = Words.wrap(bar.words(), SIZE, widthMm - 2);
      sheet.lines(Hold.LEFT, EDGE_MM, top, SIZE, lines);
      double head = Words.height(lines, SIZE) + 0.6;
      bar(sheet, bar, stockMm, kerfMm, scale, top + head);
      top += head + ROW_MM - 4;
    }
    return sheet.svg(widthMm, top, title);
  }

  private static void bar(
      Sheet sheet, Bar bar, double stockMm, double kerfMm, double scale, double top) {
    double end = EDGE_MM + scale * stockMm;
    double rest = Math.max(EDGE_MM, end - scale * bar.restMm());
    sheet.rect("stock", new Box(EDGE_MM, top, end, top + BAR_MM), "#fff", Sheet.INK, 0.2);
    if (end - rest > 0.3) {
      List<Spot> corners =
          new ArrayList<>(
              List.of(
                  new Spot(rest, top),
                  new Spot(end, top),
                  new Spot(end, top + BAR_MM),
                  new Spot(rest, top + BAR_MM)));
      sheet.path(
          "rest",
          Hatch.of(corners, new Box(rest, top, end, top + BAR_MM), HATCH_MM),
          Sheet.INK,
          0.25,
          "");
    }
    double at = EDGE_MM;
    for (Piece piece : bar.pieces()) {
      double to = at + scale * piece.lengthMm();
      sheet.rect("piece", new Box(at, top, to, top + BAR_MM), "#e8ebe8", Sheet.INK, 0.3);
      Box room = Sheet.room(Hold.MIDDLE, (at + to) / 2, top + BAR_MM / 2, SIZE, piece.words());
      // A piece too short for its words is told by the line above.
      if (room.width() < to - at - 0.8) {
        sheet.text(Hold.MIDDLE, (at + to) / 2, top + BAR_MM / 2, SIZE, piece.words());
      }
      at = to + scale * kerfMm;
    }
  }
}
