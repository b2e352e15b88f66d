package org.loomwright.cli.sum;

import java.util.OptionalDouble;

/**
 * One figure of an answer.
 *
 * @param key its key in JSON, with the unit at the end
 * @param what what it is, for people
 * @param value the value in the unit of the key; empty where there is none
 * @param shown the value with its unit as people read it, or why there is none
 */
record Figure(String key, String what, OptionalDouble value, String shown) {

  /** A figure that has a value. */
  static Figure of(String key, String what, double value, String unit) {
    return new Figure(key, what, OptionalDouble.of(value), Amounts.of(value, unit));
  }

  /** A figure that has none. */
  static Figure none(String key, String what, String why) {
    return new Figure(key, what, OptionalDouble.empty(), "none: " + why);
  }
}
