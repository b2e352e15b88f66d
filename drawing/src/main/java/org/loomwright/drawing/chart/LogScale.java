package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A logarithmic axis: place = start + (end - start) · log(value / from) / log(to / from).
 *
 * @param from value at the start, above 0
 * @param to value at the end, above that at the start
 * @param start place of the start, mm
 * @param end place of the end, mm
 */
record LogScale(double from, double to, double start, double end) {

  /** Where a value lies, mm; outside the axis for values outside it. */
  double at(double value) {
    return start + (end - start) * Math.log(value / from) / Math.log(to / from);
  }

  /** Length of a decade, mm. */
  double decadeMm() {
    return Math.abs(at(10 * from) - start);
  }

  /** Values digit · 10ⁿ on the axis, rising. */
  List<Double> marks(int digit) {
    List<Double> marks = new ArrayList<>();
    for (int power = exponent(from) - 1; power <= exponent(to) + 1; power++) {
      double value = digit * power(power);
      if (value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9)) {
        marks.add(value);
      }
    }
    return marks;
  }

  /** Largest of 1, 2, 5 · 10ⁿ not above a value. */
  static double roundDown(double value) {
    double decade = decadeBelow(value);
    double lead = value / decade * (1 + 1e-9);
    return decade * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  /** Smallest of 1, 2, 5 · 10ⁿ not below a value. */
  static double roundUp(double value) {
    double decade = decadeBelow(value);
    double lead = value / decade * (1 - 1e-9);
    return decade * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
  }

  /** Power of ten not above a value. */
  static double decadeBelow(double value) {
    return power(exponent(value));
  }

  private static int exponent(double value) {
    return (int) Math.floor(Math.log10(value) + 1e-9);
  }

  /** Correctly rounded, which repeated multiplication is not. */
  private static double power(int exponent) {
    return Double.parseDouble("1e" + exponent);
  }
}
