package org.loomwright.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A number without rounding: a decimal over a whole number above zero. Rounded once, at the end, so
 * that 32 1/2 in is 825.5 mm and not nearly so.
 */
record Exact(BigDecimal numerator, BigInteger denominator) {
  /** Far more digits than a double holds, so that the second rounding can't be seen. */
  private static final MathContext DIGITS = new MathContext(60);

  static Exact of(BigDecimal value) {
    return new Exact(value, BigInteger.ONE);
  }

  Exact plus(Exact other) {
    return new Exact(
        numerator
            .multiply(new BigDecimal(other.denominator))
            .add(other.numerator.multiply(new BigDecimal(denominator))),
        denominator.multiply(other.denominator));
  }

  Exact minus(BigDecimal value) {
    return new Exact(numerator.subtract(value.multiply(new BigDecimal(denominator))), denominator);
  }

  Exact times(BigDecimal factor) {
    return new Exact(numerator.multiply(factor), denominator);
  }

  Exact dividedBy(BigInteger divisor) {
    return new Exact(numerator, denominator.multiply(divisor));
  }

  Exact negated() {
    return new Exact(numerator.negate(), denominator);
  }

  boolean isWhole() {
    return numerator.remainder(new BigDecimal(denominator)).signum() == 0;
  }

  int signum() {
    return numerator.signum();
  }

  int compareWith(BigDecimal value) {
    return numerator.compareTo(value.multiply(new BigDecimal(denominator)));
  }

  /** The nearest double. */
  double toDouble() {
    return denominator.equals(BigInteger.ONE)
        ? numerator.doubleValue()
        : numerator.divide(new BigDecimal(denominator), DIGITS).doubleValue();
  }
}
