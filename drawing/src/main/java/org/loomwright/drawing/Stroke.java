package org.loomwright.drawing;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * One line or area of a mark.
 *
 * @param name what it is, as class of the element
 * @param points corners
 * @param closed whether the last corner joins the first
 * @param fill colour of the area, "none" for a line
 * @param stroke colour of the line
 * @param widthMm width of the line on paper
 * @param dashes dashes as in SVG; empty for a line without
 */
record Stroke(
    String name,
    List<At> points,
    boolean closed,
    String fill,
    String stroke,
    double widthMm,
    String dashes) {
  static final String INK = "#111";

  /** A point, mm. */
  record At(double x, double y) {
    @Override
    public String toString() {
      return Svg.number(x) + "," + Svg.number(y);
    }
  }

  Stroke {
    points = List.copyOf(points);
  }

  /** A closed line round an area. */
  static Stroke area(String name, List<At> points, String fill, double widthMm, String dashes) {
    return new Stroke(name, points, true, fill, INK, widthMm, dashes);
  }

  /** A line from a point to another. */
  static Stroke line(String name, At from, At to, double widthMm) {
    return new Stroke(name, List.of(from, to), false, "none", INK, widthMm, "");
  }

  /** The same elsewhere. */
  Stroke moved(UnaryOperator<At> by) {
    return new Stroke(
        name, points.stream().map(by).toList(), closed, fill, stroke, widthMm, dashes);
  }

  /** As a line only, in another colour and width. */
  Stroke casing(double width) {
    return new Stroke("casing", points, closed, "none", "#fff", width, "");
  }

  /** The same without its area. */
  Stroke hollow() {
    return new Stroke(name, points, closed, "none", stroke, widthMm, dashes);
  }

  /** Markup. */
  String svg() {
    return (closed ? "<polygon" : "<polyline")
        + " class=\""
        + name
        + "\" points=\""
        + points.stream().map(At::toString).collect(Collectors.joining(" "))
        + "\" fill=\""
        + fill
        + "\" stroke=\""
        + stroke
        + "\" stroke-width=\""
        + Svg.number(widthMm)
        + "\""
        + (dashes.isEmpty()
            ? ""
            : " stroke-dasharray=\"" + dashes + "\" stroke-linecap=\"" + cap() + "\"")
        + "/>";
  }

  /** Dashes of no length are dots. */
  private String cap() {
    return dashes.startsWith("0 ") ? "round" : "butt";
  }
}
