package org.loomwright.cli.sum;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers with their units as people read them, the same in every locale. */
final class Amounts {

  private Amounts() {}

  /** Four significant figures: more than any wire on a bench is known to. */
  static String of(double value, String unit) {
    if (Double.isInfinite(value)) {
      return "no limit";
    }
    String number =
        isWhole(value)
            ? Long.toString((long) value)
            : BigDecimal.valueOf(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    return unit.isEmpty() || unit.equals("1") ? number : number + " " + unit;
  }

  /** Whether the value can be written without a decimal point. */
  static boolean isWhole(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15;
  }
}
