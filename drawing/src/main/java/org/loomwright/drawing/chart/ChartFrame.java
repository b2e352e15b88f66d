package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Figure;
import org.loomwright.drawing.ink.Labels;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * The axes of a protection chart: current to the right, time upwards.
 *
 * @param box the plot between the axes
 * @param currents axis of the currents, A
 * @param times axis of the times, s
 */
record ChartFrame(Box box, LogScale currents, LogScale times) {
  /** Font size of figures at the axes. */
  static final double SIZE = 2.6;

  private static final double LEFT_MM = 16;
  private static final double RIGHT_MM = 10.5;
  private static final double TOP_MM = 9;
  private static final double UNDER_MM = 10;

  /** Times below this say nothing about a fuse in a vehicle, s. */
  private static final double SHORTEST_S = 1e-3;

  /** Decades of time shown at least. */
  private static final double LEAST_SPAN = 1e3;

  private static final String TIME = "time in s";
  private static final double MINUTE_S = 60;
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;

  /** Axes that show a plot whole, but times below a millisecond. */
  static ChartFrame of(ProtectionPlot plot, double widthMm, double plotHeightMm) {
    Box box = new Box(LEFT_MM, TOP_MM, widthMm - RIGHT_MM, TOP_MM + plotHeightMm);
    double[] currents = currents(plot);
    double[] times = points(plot).mapToDouble(ProtectionPlot.Point::timeS).toArray();
    double lowA = LogScale.roundDown(DoubleStream.of(currents).min().orElse(1) / 1.3);
    double highA = LogScale.roundUp(DoubleStream.of(currents).max().orElse(100) * 1.3);
    double highS = 10 * LogScale.decadeBelow(DoubleStream.of(times).max().orElse(100) * 1.0001);
    double lowS =
        Math.max(
            LogScale.decadeBelow(DoubleStream.of(times).min().orElse(0.01)),
            Math.min(SHORTEST_S, highS / LEAST_SPAN));
    return new ChartFrame(
        box,
        new LogScale(lowA, Math.max(highA, 10 * lowA), box.left(), box.right()),
        new LogScale(Math.min(lowS, highS / LEAST_SPAN), highS, box.bottom(), box.top()));
  }

  private static double[] currents(ProtectionPlot plot) {
    return DoubleStream.concat(
            points(plot).mapToDouble(ProtectionPlot.Point::currentA),
            Stream.of(plot.smallestFaultA(), plot.largestFaultA())
                .flatMapToDouble(OptionalDouble::stream))
        .toArray();
  }

  private static Stream<ProtectionPlot.Point> points(ProtectionPlot plot) {
    return Stream.of(
            plot.earliest().stream(),
            plot.latest().stream(),
            plot.damage().stream(),
            plot.loads().stream().map(ProtectionPlot.Load::at))
        .flatMap(it -> it);
  }

  /** Where a point lies. */
  Spot spot(ProtectionPlot.Point point) {
    return new Spot(currents.at(point.currentA()), times.at(point.timeS()));
  }

  /** Where points lie. */
  List<Spot> spots(List<ProtectionPlot.Point> points) {
    return points.stream().map(this::spot).toList();
  }

  /** The stretches of a line inside the plot. */
  List<Segment> cut(List<Spot> line) {
    return Segment.through(line).stream().flatMap(it -> it.inside(box).stream()).toList();
  }

  /** Lower edge of the figures under the plot, mm. */
  double underMm() {
    return box.bottom() + UNDER_MM;
  }

  /** Grid of decades and their parts, frame, and figures at the axes. */
  void draw(Sheet sheet) {
    sheet.rect("plot", box, "#fff", "none", 0);
    for (int digit = 2; digit <= 9; digit++) {
      sheet.path("part", grid(digit), "#ccc", 0.12, "");
    }
    sheet.path("decade", grid(1), "#888", 0.2, "");
    sheet.rect("frame", box, "none", Sheet.INK, 0.35);
    currentFigures(sheet);
    timeFigures(sheet);
  }

  private List<Segment> grid(int digit) {
    List<Segment> lines = new ArrayList<>();
    if (shown(currents, digit)) {
      currents.marks(digit).stream()
          .mapToDouble(currents::at)
          .mapToObj(x -> new Segment(new Spot(x, box.top()), new Spot(x, box.bottom())))
          .forEach(lines::add);
    }
    if (shown(times, digit)) {
      times.marks(digit).stream()
          .mapToDouble(times::at)
          .mapToObj(y -> new Segment(new Spot(box.left(), y), new Spot(box.right(), y)))
          .forEach(lines::add);
    }
    return lines;
  }

  /** The lines between 9 and 10 lie closest; below these lengths they would run together. */
  private static boolean shown(LogScale scale, int digit) {
    double decade = scale.decadeMm();
    return digit == 1 || decade >= 14 || decade >= 6 && (digit == 2 || digit == 5);
  }

  /**
   * Names a fault above the plot: the smallest with its end at its line, the largest with its
   * beginning, so that neither line runs through a name.
   *
   * @param y height of the name, mm
   */
  void fault(Sheet sheet, String name, double currentA, double y) {
    String words = name + " " + Figure.of(currentA) + " A";
    double x = currents.at(currentA);
    Box room = Sheet.room(y < TOP_MM / 2 ? Hold.LEFT : Hold.RIGHT, x, y, SIZE, words);
    double least = Sheet.room(Hold.LEFT, 0.5, y, SIZE, TIME).right() + 1.5;
    double most = box.right() + RIGHT_MM - 0.5 - room.width();
    double left = Math.min(most, Math.max(least, room.left()));
    sheet.text(Hold.LEFT, left, y, SIZE, words);
  }

  private void currentFigures(Sheet sheet) {
    Labels strip =
        new Labels(new Box(0, box.bottom(), box.right() + RIGHT_MM, underMm()), sheet.texts());
    double y = box.bottom() + 2.8;
    for (int digit : currents.decadeMm() >= 22 ? new int[] {1, 2, 5} : new int[] {1}) {
      for (double value : currents.marks(digit)) {
        String words = Figure.of(value);
        Box room = Sheet.room(Hold.MIDDLE, currents.at(value), y, SIZE, words);
        if (strip.place(List.of(room)).isPresent()) {
          sheet.text(Hold.MIDDLE, currents.at(value), y, SIZE, words);
        }
      }
    }
    sheet.text(
        Hold.MIDDLE, (box.left() + box.right()) / 2, y + Words.PITCH * SIZE, SIZE, "current in A");
  }

  private void timeFigures(Sheet sheet) {
    sheet.text(Hold.LEFT, 0.5, TOP_MM - 3, SIZE, TIME);
    Labels strip = new Labels(new Box(0, 0, box.right() + RIGHT_MM, underMm()), sheet.texts());
    for (double value : times.marks(1)) {
      side(sheet, strip, Hold.RIGHT, box.left() - 1.2, value, Figure.of(value));
    }
    side(sheet, strip, Hold.LEFT, box.right() + 1.6, MINUTE_S, "1 min");
    side(sheet, strip, Hold.LEFT, box.right() + 1.6, HOUR_S, "1 h");
    side(sheet, strip, Hold.LEFT, box.right() + 1.6, DAY_S, "1 day");
  }

  private void side(Sheet sheet, Labels strip, Hold hold, double x, double timeS, String words) {
    if (timeS < times.from() * (1 - 1e-9) || timeS > times.to() * (1 + 1e-9)) {
      return;
    }
    double y = times.at(timeS);
    if (strip.place(List.of(Sheet.room(hold, x, y, SIZE, words))).isPresent()) {
      sheet.text(hold, x, y, SIZE, words);
      if (hold == Hold.LEFT) {
        sheet.line(
            "tick",
            new Spot(box.right() - 1, y),
            new Spot(box.right() + 1, y),
            Sheet.INK,
            0.35,
            "");
      }
    }
  }
}
