package org.loomwright.model.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as plain digits with a point: no exponent, no grouping, the same in every locale. */
final class Plain {
  private Plain() {}

  /** The shortest decimal that reads back as the same double. */
  static String text(double value) {
    return text(new BigDecimal(Double.toString(value)));
  }

  static String text(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Rounded half up to at most so many decimals, trailing zeros left out. */
  static String rounded(double value, int decimals) {
    return text(new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP));
  }
}
