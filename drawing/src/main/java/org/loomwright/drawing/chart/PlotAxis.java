package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * An axis of a curve chart with its place on paper.
 *
 * @param from value at the start
 * @param to value at the end
 * @param step distance of marks; 0 on a logarithmic axis
 * @param start place of the start, mm
 * @param end place of the end, mm
 */
record PlotAxis(double from, double to, double step, double start, double end) {
  private static final int STEPS = 5;

  static PlotAxis of(CurvePlot plot, boolean right, double start, double end) {
    CurvePlot.Axis axis = right ? plot.across() : plot.up();
    double[] values = plot.values(right).mapToDouble(Double::doubleValue).toArray();
    double low = DoubleStream.of(values).min().orElse(0);
    double high = DoubleStream.of(values).max().orElse(1);
    if (axis.logarithmic()) {
      double from = LogScale.roundDown(low);
      double to = LogScale.roundUp(high * 1.02);
      return new PlotAxis(from, Math.max(to, 10 * from), 0, start, end);
    }
    double least = axis.fromZero() ? Math.min(0, low) : low;
    double span = Math.max(high - least, Math.max(1e-6, 1e-3 * Math.abs(high)));
    double step = LogScale.roundUp(span / STEPS);
    double from = step * Math.floor(least / step + 1e-9);
    double to = step * Math.ceil(high / step - 1e-9);
    // The highest value stays off the frame, so that its name has room.
    double free = right ? 0 : 0.06 * span;
    return new PlotAxis(
        from, Math.max(to - high < free ? to + step : to, from + step), step, start, end);
  }

  double at(double value) {
    return step == 0
        ? new LogScale(from, to, start, end).at(value)
        : start + (end - start) * (value - from) / (to - from);
  }

  /** Values with a line of the grid, rising. */
  List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    if (step == 0) {
      LogScale scale = new LogScale(from, to, start, end);
      for (int digit : scale.decadeMm() >= 16 ? new int[] {1, 2, 5} : new int[] {1}) {
        marks.addAll(scale.marks(digit));
      }
      return marks;
    }
    for (int i = 0; from + i * step <= to + 1e-9 * step; i++) {
      marks.add(step * Math.rint(from / step + i));
    }
    return marks;
  }
}
