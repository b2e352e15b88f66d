package org.loomwright.drawing.board;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.loomwright.drawing.LetterWidths;

/** Shapes of SVG in mm, black on white, the same bytes everywhere. */
final class Ink {
  static final String BLACK = "#111";
  static final String FONT = "DejaVu Sans Condensed, sans-serif";

  private final StringBuilder out = new StringBuilder();

  /** A number to a thousandth, without needless zeros. */
  static String number(double value) {
    return number(value, 3);
  }

  static String number(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        default -> safe.append(c < ' ' ? ' ' : c);
      }
    }
    return safe.toString();
  }

  /** How wide a text comes out, mm. */
  static double widthMm(String text, double sizeMm) {
    return LetterWidths.ems(text) * sizeMm;
  }

  @Override
  public String toString() {
    return out.toString();
  }

  Ink raw(String svg) {
    out.append(svg);
    return this;
  }

  Ink line(String name, List<Point> points, String stroke, double widthMm, String more) {
    out.append("<polyline class=\"").append(name).append("\" points=\"");
    String gap = "";
    for (Point point : points) {
      out.append(gap).append(number(point.xMm())).append(',').append(number(point.yMm()));
      gap = " ";
    }
    out.append("\" fill=\"none\" stroke=\"")
        .append(stroke)
        .append("\" stroke-width=\"")
        .append(number(widthMm))
        .append('"')
        .append(more)
        .append("/>\n");
    return this;
  }

  Ink box(String name, Box box, double strokeMm, String fill, String more) {
    out.append("<rect class=\"").append(name).append('"');
    attribute("x", box.xMm());
    attribute("y", box.yMm());
    attribute("width", box.widthMm());
    attribute("height", box.heightMm());
    return paint(fill, strokeMm, more);
  }

  Ink circle(String name, Point at, double radiusMm, double strokeMm, String fill) {
    out.append("<circle class=\"").append(name).append('"');
    attribute("cx", at.xMm());
    attribute("cy", at.yMm());
    attribute("r", radiusMm);
    return paint(fill, strokeMm, "");
  }

  Ink polygon(String name, String fill, double strokeMm, Point... corners) {
    out.append("<polygon class=\"").append(name).append("\" points=\"");
    String gap = "";
    for (Point point : corners) {
      out.append(gap).append(number(point.xMm())).append(',').append(number(point.yMm()));
      gap = " ";
    }
    out.append('"');
    return paint(fill, strokeMm, "");
  }

  /** A text that takes the width reckoned for it, whatever font is at hand. */
  Ink text(Text text) {
    double x = text.at().xMm();
    double y = text.at().yMm();
    // Capitals are about 0.72 of the size high.
    double drop = 0.36 * text.sizeMm();
    out.append("<text class=\"").append(text.name()).append('"');
    attribute("x", text.isUpward() ? x + drop : x);
    attribute("y", text.isUpward() ? y : y + drop);
    attribute("font-size", text.sizeMm());
    out.append(" text-anchor=\"middle\" lengthAdjust=\"spacingAndGlyphs\"");
    attribute("textLength", text.widthMm());
    if (text.isUpward()) {
      out.append(" transform=\"rotate(-90 ")
          .append(number(x + drop))
          .append(' ')
          .append(number(y))
          .append(")\"");
    }
    out.append('>').append(escape(text.text())).append("</text>\n");
    return this;
  }

  private void attribute(String name, double value) {
    out.append(' ').append(name).append("=\"").append(number(value)).append('"');
  }

  private Ink paint(String fill, double strokeMm, String more) {
    out.append(" fill=\"").append(fill).append('"');
    if (strokeMm > 0) {
      out.append(" stroke=\"").append(BLACK).append('"');
      attribute("stroke-width", strokeMm);
    }
    out.append(more).append("/>\n");
    return this;
  }
}
