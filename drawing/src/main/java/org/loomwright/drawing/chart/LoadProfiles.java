package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Figure;
import org.loomwright.drawing.ink.Hatch;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * Loads of the pins of one plug, a row each: current upwards on one scale for all, so that they can
 * be compared; to the right one turn of on and off, of which the load is on for its share. The peak
 * after switching on is hatched; how long it lasts stands in words, its width says nothing. Same
 * input, same bytes.
 */
public final class LoadProfiles {
  /** Narrowest picture, mm. */
  public static final double LEAST_WIDTH_MM = 78;

  private static final double SIZE = 2.8;
  private static final double EDGE_MM = 0.6;
  private static final double HIGH_MM = 13;
  private static final double PAD_MM = 2.4;
  private static final double GAP_MM = 2.5;
  private static final double NAMES = 0.25;
  private static final double PICTURES = 0.36;
  private static final double HATCH_MM = 1.1;

  /** Part of the time it is on that the peak is drawn over. */
  private static final double PEAK = 0.22;

  private LoadProfiles() {}

  /**
   * Draws rows under each other.
   *
   * @param title what they are, for those who can't see it
   * @param widthMm width of the picture, 78 mm or more
   */
  public static String svg(
      String title, List<LoadProfile> loads, double widthMm, Lettering lettering) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "profiles of " + widthMm + " mm are too narrow; give " + LEAST_WIDTH_MM + " mm or more");
    }
    double highest = loads.stream().mapToDouble(LoadProfile::highestA).max().orElse(0);
    double scaleA = highest > 0 ? LogScale.roundUp(highest) : 1;
    Sheet sheet = new Sheet(lettering);
    double left = NAMES * widthMm + 8;
    double right = left + PICTURES * widthMm;
    double top = EDGE_MM;
    for (LoadProfile it : loads) {
      List<String> name = Words.wrap(it.name(), SIZE, NAMES * widthMm - GAP_MM);
      List<String> words = Words.wrap(it.words(), SIZE, widthMm - EDGE_MM - right - GAP_MM);
      double high =
          2 * PAD_MM
              + Math.max(HIGH_MM, Math.max(Words.height(name, SIZE), Words.height(words, SIZE)));
      sheet.line(
          "rule", new Spot(EDGE_MM, top), new Spot(widthMm - EDGE_MM, top), "#999", 0.15, "");
      double middle = top + high / 2;
      sheet.lines(Hold.LEFT, EDGE_MM, middle - Words.height(name, SIZE) / 2, SIZE, name);
      sheet.lines(Hold.LEFT, right + GAP_MM, middle - Words.height(words, SIZE) / 2, SIZE, words);
      Box box = new Box(left, middle - HIGH_MM / 2, right, middle + HIGH_MM / 2);
      profile(sheet, it, box, scaleA);
      top += high;
    }
    return sheet.svg(widthMm, top, title);
  }

  private static void profile(Sheet sheet, LoadProfile it, Box box, double scaleA) {
    sheet.rect("plot", box, "#fff", "#bbb", 0.15);
    double half = (box.top() + box.bottom()) / 2;
    sheet.line("grid", new Spot(box.left(), half), new Spot(box.right(), half), "#bbb", 0.15, "");
    scale(sheet, box.left(), box.top(), Figure.of(scaleA) + " A");
    scale(sheet, box.left(), box.bottom(), "0");
    double on = box.left() + it.duty() * box.width();
    double level = box.bottom() - it.continuousA() / scaleA * box.height();
    sheet.rect("level", new Box(box.left(), level, on, box.bottom()), "#dde6e6", "none", 0);
    List<Spot> line = new ArrayList<>();
    line.add(new Spot(box.left(), box.bottom()));
    if (it.peakA().isPresent()) {
      double peak = box.bottom() - it.peakA().getAsDouble() / scaleA * box.height();
      double end = box.left() + PEAK * (on - box.left());
      Box start = new Box(box.left(), Math.min(peak, level), end, Math.max(peak, level));
      List<Spot> corners =
          List.of(
              new Spot(start.left(), start.top()),
              new Spot(start.right(), start.top()),
              new Spot(start.right(), start.bottom()),
              new Spot(start.left(), start.bottom()));
      if (start.height() > 0.2) {
        sheet.path("peak", Hatch.of(corners, start, HATCH_MM), Sheet.INK, 0.25, "");
      }
      line.add(new Spot(box.left(), peak));
      line.add(new Spot(end, peak));
      line.add(new Spot(end, level));
      if (!it.peakWords().isEmpty()) {
        double y = Math.min(box.bottom() - SIZE, Math.max(box.top() + SIZE, peak + 0.8 * SIZE));
        if (level - y > 0.7 * SIZE
            && Sheet.room(Hold.LEFT, end + 0.8, y, SIZE, it.peakWords()).right() < box.right()) {
          sheet.text(Hold.LEFT, end + 0.8, y, SIZE, it.peakWords());
        }
      }
    } else {
      line.add(new Spot(box.left(), level));
    }
    line.add(new Spot(on, level));
    line.add(new Spot(on, box.bottom()));
    line.add(new Spot(box.right(), box.bottom()));
    sheet.path("load", Segment.through(line), Sheet.INK, 0.5, "");
  }

  private static void scale(Sheet sheet, double x, double y, String words) {
    sheet.text(Hold.RIGHT, x - 0.8, y, SIZE, words);
  }
}
