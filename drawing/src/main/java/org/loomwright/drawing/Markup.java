package org.loomwright.drawing;

/** Elements of SVG. */
final class Markup {
  private Markup() {}

  /** The start of a picture with its title. */
  static String open(double widthMm, double heightMm, String title) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + Svg.number(widthMm)
        + "mm\" height=\""
        + Svg.number(heightMm)
        + "mm\" viewBox=\"0 0 "
        + Svg.number(widthMm)
        + ' '
        + Svg.number(heightMm)
        + "\" role=\"img\"><title>"
        + Svg.escape(title)
        + "</title>";
  }

  /** A filled rectangle. */
  static String rect(
      String name, double x, double y, double width, double height, double radius, String fill) {
    return rect(name, x, y, width, height, radius, fill, "none", 0, "");
  }

  /** A rectangle with a line round it. */
  static String rect(
      String name,
      double x,
      double y,
      double width,
      double height,
      double radius,
      String fill,
      String stroke,
      double strokeWidth,
      String more) {
    return "<rect class=\""
        + name
        + "\" x=\""
        + Svg.number(x)
        + "\" y=\""
        + Svg.number(y)
        + "\" width=\""
        + Svg.number(width)
        + "\" height=\""
        + Svg.number(height)
        + "\" rx=\""
        + Svg.number(radius)
        + "\" fill=\""
        + fill
        + "\" stroke=\""
        + stroke
        + "\" stroke-width=\""
        + Svg.number(strokeWidth)
        + "\""
        + more
        + "/>";
  }

  /** An ellipse with a line round it. */
  static String ellipse(
      String name,
      double x,
      double y,
      double halfX,
      double halfY,
      String fill,
      double strokeWidth,
      String more) {
    return "<ellipse class=\""
        + name
        + "\" cx=\""
        + Svg.number(x)
        + "\" cy=\""
        + Svg.number(y)
        + "\" rx=\""
        + Svg.number(halfX)
        + "\" ry=\""
        + Svg.number(halfY)
        + "\" fill=\""
        + fill
        + "\" stroke=\""
        + Stroke.INK
        + "\" stroke-width=\""
        + Svg.number(strokeWidth)
        + "\""
        + more
        + "/>";
  }

  /** Raster picture from its data address. */
  static String image(double widthMm, double heightMm, String dataUri) {
    return "<image xmlns:xlink=\"http://www.w3.org/1999/xlink\" x=\"0\" y=\"0\" width=\""
        + Svg.number(widthMm)
        + "\" height=\""
        + Svg.number(heightMm)
        + "\" preserveAspectRatio=\"none\" xlink:href=\""
        + dataUri
        + "\"/>";
  }
}
