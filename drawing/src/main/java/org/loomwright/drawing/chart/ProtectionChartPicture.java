package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Hatch;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * A fuse and the wire behind it on logarithmic axes of current and time: the hatched band in which
 * the fuse opens, the line from which on the wire is damaged, the loads the fuse has to stand, and
 * the smallest and largest fault. Each is named where it is drawn; a name without room there stands
 * under the chart. Same input, same bytes.
 */
public final class ProtectionChartPicture {
  /** Narrowest chart, mm. */
  public static final double LEAST_WIDTH_MM = 90;

  private static final String FUSE = "#1d4e89";
  private static final String WIRE = "#8a1c1c";

  /** Height of the name of the largest fault, mm. */
  private static final double UPPER_MM = 2;

  /** Height of the name of the smallest fault, mm. */
  private static final double LOWER_MM = 6;

  private static final double HATCH_MM = 2.2;

  private ProtectionChartPicture() {}

  /**
   * Draws a chart.
   *
   * @param plot what to show
   * @param widthMm width of the picture, 90 mm or more; some 100 mm read well on a phone
   * @param lettering how text is written
   * @throws IllegalArgumentException when the width is too small
   */
  public static String svg(ProtectionPlot plot, double widthMm, Lettering lettering) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "a protection chart of "
              + widthMm
              + " mm is too narrow; give "
              + LEAST_WIDTH_MM
              + " mm or more");
    }
    ChartFrame frame = ChartFrame.of(plot, widthMm, Math.min(105, Math.max(72, 0.6 * widthMm)));
    Sheet sheet = new Sheet(lettering);
    frame.draw(sheet);
    plot.largestFaultA().ifPresent(it -> frame.fault(sheet, "largest fault", it, UPPER_MM));
    plot.smallestFaultA().ifPresent(it -> frame.fault(sheet, "smallest fault", it, LOWER_MM));
    List<Segment> band = band(plot, frame);
    sheet.path("band", band, FUSE, 0.18, "");

    ChartLabels labels = new ChartLabels(frame, sheet.texts());
    List<Segment> earliest = frame.cut(frame.spots(plot.earliest()));
    List<Segment> latest = frame.cut(frame.spots(plot.latest()));
    List<Segment> damage = frame.cut(frame.spots(plot.damage()));
    List<Segment> smallest = upright(frame, plot.smallestFaultA(), LOWER_MM);
    List<Segment> largest = upright(frame, plot.largestFaultA(), UPPER_MM);
    List.of(earliest, latest, damage, smallest, largest).forEach(labels::avoid);
    labels.avoidHatching(band);
    List<ChartLabels.Mark> marks = ChartLabels.marks(plot.loads(), frame);
    marks.forEach(labels::keepOff);
    // Lines first: a mark can be named from farther off.
    labels.curve(plot.wire() + ": damaged above", "thick line", damage, true);
    labels.curve(plot.fuse() + ": open above", "upper edge of the hatching", latest, true);
    labels.curve(plot.fuse() + ": closed below", "lower edge of the hatching", earliest, false);
    marks.forEach(labels::load);

    labels.plates(sheet);
    sheet.path("smallest-fault", smallest, Sheet.INK, 0.4, "3 0.9 0.6 0.9");
    sheet.path("largest-fault", largest, Sheet.INK, 0.4, "4 1.6");
    sheet.path("earliest", earliest, FUSE, 0.4, "");
    sheet.path("latest", latest, FUSE, 0.6, "");
    sheet.path("damage", damage, WIRE, 1, "");
    labels.leaders(sheet);
    marks.forEach(it -> it.draw(sheet));
    labels.write(sheet);

    double height = under(sheet, labels, frame, widthMm);
    return sheet.svg(widthMm, height, "protection chart: " + plot.fuse() + ", " + plot.wire());
  }

  /** Names without room in the chart; returns the height of the picture. */
  private static double under(Sheet sheet, ChartLabels labels, ChartFrame frame, double widthMm) {
    List<String> lines = new ArrayList<>();
    if (!labels.left().isEmpty()) {
      lines.addAll(
          Words.wrap(
              "Also in the chart: " + String.join("; ", labels.left()) + ".",
              ChartFrame.SIZE,
              widthMm - 2));
    }
    sheet.lines(Hold.LEFT, 1, frame.underMm(), ChartFrame.SIZE, lines);
    return frame.underMm() + Words.height(lines, ChartFrame.SIZE);
  }

  private static List<Segment> upright(ChartFrame frame, OptionalDouble currentA, double nameMm) {
    if (currentA.isEmpty()) {
      return List.of();
    }
    Box box = frame.box();
    double x = frame.currents().at(currentA.getAsDouble());
    return List.of(new Segment(new Spot(x, box.bottom()), new Spot(x, nameMm + 1.8)));
  }

  /**
   * Hatching between the two lines of the fuse. Below the first current of a line it stays closed
   * for good; beyond the last of the earliest line it may open at once.
   */
  private static List<Segment> band(ProtectionPlot plot, ChartFrame frame) {
    if (plot.earliest().isEmpty() || plot.latest().isEmpty()) {
      return List.of();
    }
    List<Spot> low = frame.spots(plot.earliest());
    List<Spot> high = frame.spots(plot.latest());
    double bottom = frame.box().bottom() + 1;
    double top = frame.box().top() - 1;
    double lastLow = low.get(low.size() - 1).x();
    List<Spot> area = new ArrayList<>();
    area.add(new Spot(low.get(0).x(), top));
    area.addAll(low);
    area.add(new Spot(lastLow, bottom));
    area.add(new Spot(Math.max(lastLow, high.get(high.size() - 1).x()), bottom));
    for (int i = high.size() - 1; i >= 0; i--) {
      area.add(high.get(i));
    }
    area.add(new Spot(high.get(0).x(), top));
    return Hatch.of(area, frame.box(), HATCH_MM);
  }
}
