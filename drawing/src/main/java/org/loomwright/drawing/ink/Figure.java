package org.loomwright.drawing.ink;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as they stand in pictures. */
public final class Figure {
  private static final MathContext THREE = new MathContext(3);

  private Figure() {}

  /** Three significant digits, written out, without needless zeros; "0" for zero. */
  public static String of(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(THREE);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
