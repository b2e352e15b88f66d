package org.loomwright.papers.calculation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How many digits a figure is printed with, so that a sum can be done again with what is printed.
 */
final class Digits {
  /** Digits a figure gets that does not end before. */
  static final int USUAL = 5;

  /** Digits beyond which no pocket calculator goes. */
  static final int MOST = 10;

  /** A value that ends within so many digits is printed whole. */
  private static final int SHORT = 6;

  /** What lies beyond this many digits is dust of binary arithmetic. */
  private static final MathContext CLEAN = new MathContext(9);

  private static final int LONGEST_WHOLE = 9;
  private static final double SMALLEST_PLAIN = 1e-4;

  private Digits() {}

  /** The value as printed: "0.00471", "26.975", "5.6704 × 10⁻⁸"; "no limit" when there is none. */
  static String text(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not known" : value > 0 ? "no limit" : "no lower limit";
    }
    BigDecimal rounded = rounded(value, digits);
    if (rounded.signum() == 0) {
      return "0";
    }
    double size = rounded.abs().doubleValue();
    if (size < SMALLEST_PLAIN || size >= Math.pow(10, LONGEST_WHOLE)) {
      int exponent = rounded.precision() - rounded.scale() - 1;
      return sign(rounded.movePointLeft(exponent).toPlainString())
          + Wording.tenTo(Integer.toString(exponent));
    }
    return sign(rounded.toPlainString());
  }

  /** The value a reader takes from what is printed. */
  static double printed(double value, int digits) {
    return Double.isFinite(value) ? rounded(value, digits).doubleValue() : value;
  }

  /** Whether more digits would change what is printed. */
  static boolean isCut(double value, int digits) {
    return Double.isFinite(value) && !text(value, digits).equals(text(value, digits + 1));
  }

  /** One unit of the last digit but one of a value printed with so many digits. */
  static double lastButOne(double value, int digits) {
    BigDecimal shown = rounded(value, digits);
    int shownDigits = Math.max(shown.precision(), USUAL);
    int lead = shown.signum() == 0 ? 0 : shown.precision() - shown.scale();
    return Math.pow(10, lead - shownDigits + 1.0);
  }

  private static BigDecimal rounded(double value, int digits) {
    BigDecimal clean = BigDecimal.valueOf(value).round(CLEAN).stripTrailingZeros();
    if (clean.signum() == 0) {
      return BigDecimal.ZERO;
    }
    if (clean.precision() <= SHORT) {
      return clean.scale() < 0 ? clean.setScale(0, RoundingMode.UNNECESSARY) : clean;
    }
    int whole = clean.precision() - clean.scale();
    BigDecimal cut =
        BigDecimal.valueOf(value)
            .round(new MathContext(Math.max(digits, Math.min(whole, LONGEST_WHOLE))));
    return cut.scale() < 0 ? cut.setScale(0, RoundingMode.UNNECESSARY) : cut;
  }

  private static String sign(String plain) {
    return plain.startsWith("-") ? "\u2212" + plain.substring(1) : plain;
  }
}
