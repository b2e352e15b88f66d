package org.loomwright.drawing.chart;

import java.util.OptionalDouble;

/**
 * What a pin draws over one turn of on and off.
 *
 * @param name name of the pin
 * @param words what belongs beside the picture
 * @param continuousA current while it is on, A, zero or more
 * @param peakA current right after it is switched on, A
 * @param peakWords how long the peak lasts, e.g. "0.5 s"; may be empty
 * @param duty share of time it is on, above 0 to 1
 */
public record LoadProfile(
    String name,
    String words,
    double continuousA,
    OptionalDouble peakA,
    String peakWords,
    double duty) {
  /** Checks the ranges. */
  public LoadProfile {
    if (!(continuousA >= 0 && Double.isFinite(continuousA))) {
      throw new IllegalArgumentException(
          "the current of " + name + " is " + continuousA + " A; it must be zero or more");
    }
    if (!(duty > 0 && duty <= 1)) {
      throw new IllegalArgumentException(
          "the share of time of " + name + " is " + duty + "; it must be above 0 to 1");
    }
  }

  /** The highest current, A. */
  public double highestA() {
    return Math.max(continuousA, peakA.orElse(0));
  }
}
