package org.loomwright.drawing.chart;

import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;

/** A round bundle across, enlarged to the picture: its wires as circles. Same input, same bytes. */
public final class RoundBundle {
  private static final double SIZE = 2.8;
  private static final double EDGE_MM = 1;

  private RoundBundle() {}

  /**
   * A wire.
   *
   * @param words its diameter in words; left out where it has no room
   * @param xMm its middle right of that of the bundle, mm
   * @param yMm its middle below that of the bundle, mm
   * @param diameterMm its diameter, mm
   */
  public record Wire(String words, double xMm, double yMm, double diameterMm) {}

  /**
   * Draws a bundle.
   *
   * @param title what it is about
   * @param wires its wires
   * @param diameterMm diameter of the bundle, mm, above zero
   * @param words its diameter in words
   * @param widthMm width of the picture
   */
  public static String svg(
      String title,
      List<Wire> wires,
      double diameterMm,
      String words,
      double widthMm,
      Lettering lettering) {
    Sheet sheet = new Sheet(lettering);
    double radius = Math.min(widthMm / 2 - EDGE_MM, 26);
    double scale = 2 * radius / diameterMm;
    Spot middle = new Spot(widthMm / 2, EDGE_MM + radius);
    sheet.circle("bundle", middle, radius, "#fff", Sheet.INK, 0.5);
    for (Wire it : wires) {
      Spot at = new Spot(middle.x() + scale * it.xMm(), middle.y() + scale * it.yMm());
      double wide = scale * it.diameterMm();
      sheet.circle("wire", at, wide / 2, "#e8ebe8", Sheet.INK, 0.35);
      String size = it.words();
      if (Sheet.room(Hold.MIDDLE, 0, 0, SIZE, size).width() < 0.8 * wide && SIZE < 0.7 * wide) {
        sheet.text(Hold.MIDDLE, at.x(), at.y(), SIZE, size);
      }
    }
    double y = middle.y() + radius + 5;
    double left = middle.x() - radius;
    double right = middle.x() + radius;
    sheet.line("size", new Spot(left, y - 2.5), new Spot(right, y - 2.5), Sheet.INK, 0.3, "");
    for (double x : new double[] {left, right}) {
      sheet.line("size", new Spot(x, y - 3.5), new Spot(x, y - 1.5), Sheet.INK, 0.3, "");
    }
    sheet.text(Hold.MIDDLE, middle.x(), y + 0.4, SIZE, words);
    return sheet.svg(widthMm, y + 3, title);
  }
}
