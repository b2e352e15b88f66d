package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.drawing.chart.ProtectionPlot.Load;
import org.loomwright.drawing.chart.ProtectionPlot.Point;

/** Plots as a kit has them. */
final class Plots {
  private static final double[] TIMES = {1.1, 1.35, 1.6, 2, 3.5, 6};
  private static final double[] MOST_S = {360_000, 600, 50, 5, 0.5, 0.15};
  private static final double[] LEAST_S = {360_000, 0.75, 0.25, 0.15, 0.08, 0.03};

  private Plots() {}

  /**
   * A blade fuse and a wire: gates of the kind of ISO 8820-3, damage by k²S²/I² above the current
   * that the wire carries for good.
   */
  static ProtectionPlot plot(
      double ratingA, double areaMm2, double goodA, List<Load> loads, double smallA, double bigA) {
    List<Point> earliest = new ArrayList<>();
    List<Point> latest = new ArrayList<>();
    earliest.add(new Point(TIMES[0] * ratingA, 360_000));
    earliest.add(new Point(TIMES[0] * ratingA * 1.000001, LEAST_S[1]));
    for (int i = 1; i < TIMES.length; i++) {
      earliest.add(new Point(TIMES[i] * ratingA, LEAST_S[i]));
      latest.add(new Point(TIMES[i] * ratingA, MOST_S[i - 1]));
      latest.add(new Point(TIMES[i] * ratingA, MOST_S[i]));
    }
    latest.add(new Point(bigA, 0.15 * Math.pow(6 * ratingA / bigA, 2)));
    List<Point> damage = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double a = goodA * 1.0005 * Math.pow(bigA / goodA, i / 60.0);
      double adiabaticS = Math.pow(115 * areaMm2 / a, 2);
      damage.add(
          new Point(
              a, Math.max(1e-12, Math.min(360_000, adiabaticS / (1 - Math.pow(goodA / a, 2))))));
    }
    return new ProtectionPlot(
        "fuse F3, " + (int) ratingA + " A",
        "wire " + areaMm2 + " mm²",
        earliest,
        latest,
        damage,
        loads,
        OptionalDouble.of(smallA),
        OptionalDouble.of(bigA));
  }

  static ProtectionPlot pump() {
    return plot(
        15,
        1.5,
        24,
        List.of(
            new Load("steady load", new Point(8.2, 360_000)),
            new Load("start of the coolant pump", new Point(31, 0.2)),
            new Load("pump stalled", new Point(38, 6))),
        142,
        1350);
  }

  static ProtectionPlot lamp() {
    return plot(5, 0.5, 11, List.of(new Load("steady load", new Point(0.42, 360_000))), 62, 88);
  }
}
