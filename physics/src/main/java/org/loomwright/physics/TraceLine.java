package org.loomwright.physics;

/**
 * One step of a sum that a person can follow with a pocket calculator.
 *
 * @param what what the figure is, in words
 * @param formula the formula it came from, or "given" for an input, or "table" for a looked-up
 *     value
 * @param value the figure in {@code unit}; may be infinite ("no limit"), never NaN
 * @param unit unit as text, "1" for a bare ratio
 * @param source published source, "common practice" or "from memory"; empty for a given value
 */
public record TraceLine(String what, String formula, double value, String unit, String source) {
  /** Refuses a figure that is not a number: a trace must never hide a broken sum. */
  public TraceLine {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("the figure of \"" + what + "\" is not a number");
    }
  }
}
