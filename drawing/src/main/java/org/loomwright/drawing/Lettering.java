package org.loomwright.drawing;

/**
 * How text gets into a picture. A page keeps it as text; a printed paper may turn it into outlines
 * of a font it carries, so that the picture needs no font of the machine it is drawn on.
 */
@FunctionalInterface
public interface Lettering {

  /**
   * Markup for one upright line of text.
   *
   * @param x middle of the line, mm to the right
   * @param y middle of a capital letter's height, mm downwards
   * @param sizeMm font size
   * @param fill colour, e.g. "#fff"
   * @param text text, not escaped
   */
  String line(double x, double y, double sizeMm, String fill, String text);

  /** Text that stays text. */
  static Lettering text() {
    // Capitals of common sans-serif fonts are about 0.72 of the font size high.
    return (x, y, sizeMm, fill, text) ->
        "<text x=\""
            + Svg.number(x)
            + "\" y=\""
            + Svg.number(y + 0.36 * sizeMm)
            + "\" font-size=\""
            + Svg.number(sizeMm)
            + "\" fill=\""
            + fill
            + "\" font-family=\"DejaVu Sans Condensed, sans-serif\" font-weight=\"bold\""
            + " text-anchor=\"middle\">"
            + Svg.escape(text)
            + "</text>";
  }

  /** Text that stays text and takes the room of {@link LetterWidths}, whatever font is at hand. */
  static Lettering fitted() {
    return (x, y, sizeMm, fill, text) ->
        text()
            .line(x, y, sizeMm, fill, text)
            .replaceFirst(
                " text-anchor=\"middle\"",
                " text-anchor=\"middle\" lengthAdjust=\"spacingAndGlyphs\" textLength=\""
                    + Svg.number(sizeMm * LetterWidths.ems(text))
                    + "\"");
  }
}
