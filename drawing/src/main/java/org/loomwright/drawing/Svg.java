package org.loomwright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Small words of SVG that come out the same everywhere. */
public final class Svg {
  private Svg() {}

  /** A number to a hundredth, without needless zeros. */
  public static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Text made safe for element content and attributes. */
  public static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(allowed(text, i) ? c : c < ' ' ? ' ' : '\uFFFD');
      }
    }
    return safe.toString();
  }

  /** Whether XML 1.0 lets the character stand in a document. */
  private static boolean allowed(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
    }
    return c >= ' ' && c < '\uFFFE';
  }
}
