package org.loomwright.physics;

import java.math.BigDecimal;

/** Checks of inputs that give the same wording everywhere. */
public final class Require {
  /**
   * Largest size of any figure without a range of its own, and one over it the smallest above zero.
   * Far beyond anything wired, and products of such figures still are numbers.
   */
  public static final double MOST = 1e9;

  private Require() {}

  /** The value, if it is above zero: from a thousand-millionth to a thousand million. */
  public static double positive(String what, double value, String unit) {
    if (!(value > 0)) {
      throw new SumException(what + " must be above zero, but is " + text(value) + " " + unit);
    }
    return within(what, value, 1 / MOST, MOST, unit);
  }

  /** The value, if it is not below zero and not above a thousand million. */
  public static double notNegative(String what, double value, String unit) {
    if (!(value >= 0)) {
      throw new SumException(what + " must not be below zero, but is " + text(value) + " " + unit);
    }
    return within(what, value, 0, MOST, unit);
  }

  /** The value, if it lies in the closed range. */
  public static double within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw new SumException(
          what
              + " must be from "
              + text(low)
              + " to "
              + text(high)
              + " "
              + unit
              + ", but is "
              + text(value)
              + " "
              + unit);
    }
    return value;
  }

  /** A number as people write it: no trailing zeros, no exponent, the same in every locale. */
  public static String text(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "minus infinite";
    }
    BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
    return plain.toPlainString();
  }
}
