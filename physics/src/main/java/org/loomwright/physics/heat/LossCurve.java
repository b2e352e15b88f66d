package org.loomwright.physics.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Heat one metre of one wire gives off, by conductor temperature: straight between points that lie
 * on the heat balance. Points are set so close that half way between two of them the line is off by
 * less than 1e-4 of the heat.
 *
 * <p>Below the ambient the wire takes up heat, as much as it gives off the same number of kelvins
 * above.
 */
final class LossCurve {
  private static final double TOLERANCE = 1e-4;
  private static final int DEEPEST = 16;

  /** First points, so that no feature is missed. */
  private static final int FIRST_POINTS = 24;

  /** Rising; the ambient stands in the middle, °C. */
  private final double[] temperatureC;

  /** Rising; 0 stands in the middle, W/m. */
  private final double[] heatWPerM;

  /**
   * @param upperC temperatures from the ambient up, °C
   * @param upperWPerM heat at them, the first 0, W/m
   */
  LossCurve(List<Double> upperC, List<Double> upperWPerM) {
    int n = upperC.size() - 1;
    temperatureC = new double[2 * n + 1];
    heatWPerM = new double[2 * n + 1];
    double ambient = upperC.get(0);
    for (int i = 0; i <= n; i++) {
      temperatureC[n + i] = upperC.get(i);
      temperatureC[n - i] = 2 * ambient - upperC.get(i);
      heatWPerM[n + i] = upperWPerM.get(i);
      heatWPerM[n - i] = -upperWPerM.get(i);
    }
    temperatureC[n] = ambient;
  }

  /** A point of the heat balance. */
  record Point(double temperatureC, double heatWPerM) {}

  /**
   * A curve from a heat balance that is known by the temperature of the outside.
   *
   * @param balance conductor temperature and heat at an outside temperature, both rising
   * @param fromC outside temperature without heat: the ambient
   * @param toC highest outside temperature
   */
  static LossCurve of(DoubleFunction<Point> balance, double fromC, double toC) {
    List<Double> t = new ArrayList<>();
    List<Double> q = new ArrayList<>();
    Point before = balance.apply(fromC);
    add(t, q, before);
    double previous = fromC;
    for (int i = 1; i <= FIRST_POINTS; i++) {
      double share = (double) i / FIRST_POINTS;
      double outside = fromC + (toC - fromC) * share * share;
      Point here = balance.apply(outside);
      refine(balance, previous, before, outside, here, 0, t, q);
      previous = outside;
      before = here;
    }
    return new LossCurve(t, q);
  }

  private static void refine(
      DoubleFunction<Point> balance,
      double leftC,
      Point left,
      double rightC,
      Point right,
      int depth,
      List<Double> t,
      List<Double> q) {
    double middleC = (leftC + rightC) / 2;
    Point middle = balance.apply(middleC);
    double part =
        (middle.temperatureC() - left.temperatureC())
            / (right.temperatureC() - left.temperatureC());
    double line = left.heatWPerM() + part * (right.heatWPerM() - left.heatWPerM());
    boolean straight = Math.abs(line - middle.heatWPerM()) <= TOLERANCE * middle.heatWPerM();
    if (straight || depth == DEEPEST) {
      add(t, q, right);
      return;
    }
    refine(balance, leftC, left, middleC, middle, depth + 1, t, q);
    refine(balance, middleC, middle, rightC, right, depth + 1, t, q);
  }

  private static void add(List<Double> t, List<Double> q, Point p) {
    t.add(p.temperatureC());
    q.add(p.heatWPerM());
  }

  double ambientC() {
    return temperatureC[temperatureC.length / 2];
  }

  double highestC() {
    return temperatureC[temperatureC.length - 1];
  }

  /** The smaller heat of two curves with the same ambient, up to the lower of their ends. */
  LossCurve smaller(LossCurve other) {
    double end = Math.min(highestC(), other.highestC());
    List<Double> merged =
        DoubleStream.concat(Arrays.stream(temperatureC), Arrays.stream(other.temperatureC))
            .filter(t -> t >= ambientC() && t <= end)
            .sorted()
            .distinct()
            .boxed()
            .toList();
    return new LossCurve(
        merged, merged.stream().map(t -> Math.min(heatAt(t), other.heatAt(t))).toList());
  }

  /** Heat at a conductor temperature, W/m; below the ambient negative. */
  double heatAt(double conductorC) {
    int i = segment(conductorC);
    double part = (conductorC - temperatureC[i]) / (temperatureC[i + 1] - temperatureC[i]);
    return heatWPerM[i] + part * (heatWPerM[i + 1] - heatWPerM[i]);
  }

  /** The next point of the curve above or below; infinite beyond its ends. */
  double next(double conductorC, boolean up) {
    int i = segment(conductorC);
    if (up) {
      return conductorC >= highestC() ? Double.POSITIVE_INFINITY : temperatureC[i + 1];
    }
    if (temperatureC[i] < conductorC) {
      return temperatureC[i];
    }
    return i == 0 ? Double.NEGATIVE_INFINITY : temperatureC[i - 1];
  }

  /** Index of the segment that holds a temperature; the first and last reach beyond the ends. */
  private int segment(double conductorC) {
    int low = 0;
    int high = temperatureC.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (temperatureC[middle] <= conductorC) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
