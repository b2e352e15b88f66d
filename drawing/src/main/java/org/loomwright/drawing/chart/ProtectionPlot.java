package org.loomwright.drawing.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a protection chart shows.
 *
 * @param fuse name of the fuse, e.g. "fuse F3, 15 A"
 * @param wire name of the wire, e.g. "wire 1 mm²"
 * @param earliest corners of the line below which the fuse stays closed, current rising; empty
 *     where it is not known
 * @param latest corners of the line above which the fuse is open, current rising
 * @param damage points of the line above which the wire is damaged, current rising
 * @param loads currents the fuse has to stand; shown as marks. A load of 0 A has no place on a
 *     logarithmic axis and is left out by the caller
 * @param smallestFaultA smallest fault current, A
 * @param largestFaultA largest fault current, A
 */
public record ProtectionPlot(
    String fuse,
    String wire,
    List<Point> earliest,
    List<Point> latest,
    List<Point> damage,
    List<Load> loads,
    OptionalDouble smallestFaultA,
    OptionalDouble largestFaultA) {
  private static final double LEAST_A = 1e-3;
  private static final double MOST_A = 1e6;
  private static final double LEAST_S = 1e-12;
  private static final double MOST_S = 1e7;

  /** Copies the lists and checks the range of the fault currents. */
  public ProtectionPlot {
    earliest = List.copyOf(earliest);
    latest = List.copyOf(latest);
    damage = List.copyOf(damage);
    loads = List.copyOf(loads);
    smallestFaultA.ifPresent(it -> within("smallest fault current", it, LEAST_A, MOST_A, "A"));
    largestFaultA.ifPresent(it -> within("largest fault current", it, LEAST_A, MOST_A, "A"));
  }

  /**
   * A corner of a line.
   *
   * @param currentA 0.001 to 1 000 000 A
   * @param timeS 1e-12 to 10 000 000 s; the chart cuts lines off below a millisecond
   */
  public record Point(double currentA, double timeS) {
    /** Checks the ranges. */
    public Point {
      within("current", currentA, LEAST_A, MOST_A, "A");
      within("time", timeS, LEAST_S, MOST_S, "s");
    }
  }

  /**
   * A current that flows for a time in sound use.
   *
   * @param name e.g. "start of the motor"
   * @param at its current and how long it flows
   */
  public record Load(String name, Point at) {}

  private static void within(String what, double value, double from, double to, String unit) {
    if (!(value >= from && value <= to)) {
      throw new IllegalArgumentException(
          what
              + " is "
              + value
              + " "
              + unit
              + ", but a chart shows "
              + from
              + " to "
              + to
              + " "
              + unit);
    }
  }
}
