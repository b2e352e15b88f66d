package org.loomwright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Small words of SVG that come out the same everywhere. */
final class Svg {
  private Svg() {}

  /** A number to a hundredth, without needless zeros. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Text made safe for element content and attributes. */
  static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c < ' ' ? ' ' : c);
      }
    }
    return safe.toString();
  }
}
