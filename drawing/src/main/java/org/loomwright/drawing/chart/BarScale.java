package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The level axis that all rows of bars share, also over several pages.
 *
 * @param from value at the left end; bars begin here
 * @param to value at the right end; longer bars are drawn broken off
 * @param step distance of the figures at the axis
 * @param quantity what is shown, e.g. "conductor temperature"
 * @param unit its unit, e.g. "°C"
 */
public record BarScale(double from, double to, double step, String quantity, String unit) {
  /** A bar is drawn whole up to this share of the largest limit, measured from the left end. */
  private static final double SHOWN = 1.6;

  private static final int STEPS = 5;

  /** Checks the order of the ends. */
  public BarScale {
    if (!(from < to && step > 0)) {
      throw new IllegalArgumentException(
          "an axis from "
              + from
              + " to "
              + to
              + " in steps of "
              + step
              + " can't be drawn; the end is above the start and the step above 0");
    }
  }

  /**
   * The axis on which rows read well: it holds every limit, and every figure up to 1.6 of the
   * largest limit.
   *
   * @param from where bars begin, e.g. 0, or the ambient temperature; lower figures and limits move
   *     it down
   */
  public static BarScale of(List<BarRow> rows, double from, String quantity, String unit) {
    double low = from;
    double limit = from;
    double high = from;
    for (BarRow row : rows) {
      low = Math.min(low, Math.min(row.marginalFrom(), row.figure().orElse(low)));
      limit = Math.max(limit, row.limit());
      high = Math.max(high, row.figure().orElse(high));
    }
    double whole = limit > low ? low + SHOWN * (limit - low) : high;
    double top = Math.max(limit, Math.min(high, whole));
    double span = Math.max(top - low, Math.max(1e-6, Math.abs(low) * 1e-6));
    double step = LogScale.roundUp(1.04 * span / STEPS);
    double start = Math.floor(low / step + 1e-9) * step;
    double end = Math.ceil((low + 1.04 * span) / step - 1e-9) * step;
    return new BarScale(start, Math.max(end, start + step), step, quantity, unit);
  }

  /** Figures at the axis, rising. */
  List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    for (int i = 0; from + i * step <= to + 1e-9 * step; i++) {
      marks.add(from + i * step);
    }
    return marks;
  }

  /** Share of the axis at a value, 0 to 1; values beyond an end are at it. */
  double share(double value) {
    return Math.min(1, Math.max(0, (value - from) / (to - from)));
  }
}
