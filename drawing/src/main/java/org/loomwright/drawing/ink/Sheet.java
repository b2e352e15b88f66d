package org.loomwright.drawing.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.drawing.LetterWidths;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.Svg;

/** A picture while it is drawn: shapes in order, and the boxes of all text so far. */
public final class Sheet {
  /** Main ink. */
  public static final String INK = "#111";

  private final Lettering lettering;
  private final StringBuilder body = new StringBuilder(4096);
  private final List<Box> texts = new ArrayList<>();

  /** An empty sheet. */
  public Sheet(Lettering lettering) {
    this.lettering = lettering;
  }

  /** Where a line of text is held. */
  public enum Hold {
    /** At its left end. */
    LEFT,
    /** At its middle. */
    MIDDLE,
    /** At its right end. */
    RIGHT
  }

  /** Room a line of text takes, with its accents and descenders. */
  public static Box room(Hold hold, double x, double y, double sizeMm, String text) {
    double width = sizeMm * LetterWidths.ems(text);
    double left =
        switch (hold) {
          case LEFT -> x;
          case MIDDLE -> x - width / 2;
          case RIGHT -> x - width;
        };
    return Box.at(left, y - 0.62 * sizeMm, width, 1.24 * sizeMm);
  }

  /** Boxes of the text written so far. */
  public List<Box> texts() {
    return List.copyOf(texts);
  }

  /**
   * One line of text.
   *
   * @param y middle of a capital letter's height
   */
  public void text(Hold hold, double x, double y, double sizeMm, String fill, String text) {
    Box room = room(hold, x, y, sizeMm, text);
    texts.add(room);
    body.append(lettering.line((room.left() + room.right()) / 2, y, sizeMm, fill, text));
  }

  /** One line of text in the main ink. */
  public void text(Hold hold, double x, double y, double sizeMm, String text) {
    text(hold, x, y, sizeMm, INK, text);
  }

  /** Lines under each other, the upper edge of the first at a height. */
  public void lines(Hold hold, double x, double top, double sizeMm, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      text(hold, x, top + (i + 0.5) * Words.PITCH * sizeMm, sizeMm, lines.get(i));
    }
  }

  /** A straight line. */
  public void line(String name, Spot from, Spot to, String stroke, double widthMm, String dashes) {
    path(name, List.of(new Segment(from, to)), stroke, widthMm, dashes);
  }

  /**
   * Stretches as one shape; nothing when there is none.
   *
   * @param dashes lengths of dash and gap, e.g. "2 1"; empty for a full line
   */
  public void path(
      String name, List<Segment> segments, String stroke, double widthMm, String dashes) {
    if (segments.isEmpty()) {
      return;
    }
    StringBuilder path = new StringBuilder();
    Spot end = new Spot(Double.NaN, Double.NaN);
    for (Segment it : segments) {
      if (!it.from().equals(end)) {
        path.append('M').append(point(it.from()));
      }
      path.append('L').append(point(it.to()));
      end = it.to();
    }
    curve(name, path.toString(), "none", stroke, widthMm, dashes);
  }

  /** A path in SVG's own words. */
  public void curve(
      String name, String path, String fill, String stroke, double widthMm, String dashes) {
    body.append("<path class=\"").append(name).append("\" d=\"").append(path).append('"');
    ink(fill, stroke, widthMm);
    if (!dashes.isEmpty()) {
      body.append(" stroke-dasharray=\"").append(dashes).append('"');
    }
    body.append(" stroke-linejoin=\"round\"/>");
  }

  /** A rectangle. */
  public void rect(String name, Box box, String fill, String stroke, double widthMm) {
    body.append("<rect class=\"").append(name).append(place(box)).append('"');
    ink(fill, stroke, widthMm);
    body.append("/>");
  }

  private static String place(Box box) {
    return "\" x=\""
        + Svg.number(box.left())
        + "\" y=\""
        + Svg.number(box.top())
        + "\" width=\""
        + Svg.number(box.width())
        + "\" height=\""
        + Svg.number(box.height());
  }

  /** A circle. */
  public void circle(
      String name, Spot middle, double radius, String fill, String stroke, double widthMm) {
    body.append("<circle class=\"")
        .append(name)
        .append("\" cx=\"")
        .append(Svg.number(middle.x()))
        .append("\" cy=\"")
        .append(Svg.number(middle.y()))
        .append("\" r=\"")
        .append(Svg.number(radius))
        .append('"');
    ink(fill, stroke, widthMm);
    body.append("/>");
  }

  /** A closed shape. */
  public void polygon(String name, List<Spot> corners, String fill, String stroke, double widthMm) {
    body.append("<polygon class=\"")
        .append(name)
        .append("\" points=\"")
        .append(corners.stream().map(Sheet::point).collect(Collectors.joining(" ")))
        .append('"');
    ink(fill, stroke, widthMm);
    body.append("/>");
  }

  /**
   * A picture from outside, stretched to a box and faded.
   *
   * @param data "data:image/…;base64,…"
   * @param opacity 0 to 1
   */
  public void image(String name, Box box, String data, double opacity) {
    body.append("<image class=\"")
        .append(name)
        .append(place(box))
        .append("\" preserveAspectRatio=\"none\" opacity=\"")
        .append(Svg.number(opacity))
        .append("\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"")
        .append(Svg.escape(data))
        .append("\"/>");
  }

  /** The finished picture. */
  public String svg(double widthMm, double heightMm, String title) {
    String width = Svg.number(widthMm);
    String height = Svg.number(heightMm);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + width
        + "mm\" height=\""
        + height
        + "mm\" viewBox=\"0 0 "
        + width
        + " "
        + height
        + "\" role=\"img\"><title>"
        + Svg.escape(title)
        + "</title>"
        + body
        + "</svg>";
  }

  private void ink(String fill, String stroke, double widthMm) {
    body.append(" fill=\"").append(fill).append('"');
    if (widthMm > 0) {
      body.append(" stroke=\"")
          .append(stroke)
          .append("\" stroke-width=\"")
          .append(Svg.number(widthMm))
          .append('"');
    }
  }

  private static String point(Spot at) {
    return Svg.number(at.x()) + "," + Svg.number(at.y());
  }
}
