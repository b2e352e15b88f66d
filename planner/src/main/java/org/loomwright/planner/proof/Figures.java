package org.loomwright.planner.proof;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as text: at most three decimals, no trailing zeros, a point whatever the country. */
final class Figures {
  private Figures() {}

  static String of(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "no finite figure";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
