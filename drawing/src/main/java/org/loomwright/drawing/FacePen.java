package org.loomwright.drawing;

import org.jspecify.annotations.Nullable;
import org.loomwright.drawing.Seen.Spot;
import org.loomwright.model.vehicle.LatchDirection;

/**
 * Shapes of a face on paper.
 *
 * @param left where the face starts, mm
 * @param top where the face starts, mm
 * @param scale mm on paper for a mm of the housing
 * @param lettering how numbers are written
 */
record FacePen(double left, double top, double scale, Lettering lettering) {
  private static final String INK = "#111";
  private static final String SHADE = "#ddd";
  private static final double WALL_GAP = 0.9;

  /** A tab outside the wall. */
  String latch(Seen seen, LatchDirection direction, double depth) {
    double width = seen.widthMm() * scale;
    double height = seen.heightMm() * scale;
    double half = 0.2 * (isUpright(direction) ? width : height);
    double slant = Math.min(1.2, half / 3);
    double middleX = left + width / 2;
    double middleY = top + height / 2;
    String points =
        switch (direction) {
          case UP -> tab(middleX, top, half, slant, 0, -depth);
          case DOWN -> tab(middleX, top + height, half, slant, 0, depth);
          case RIGHT -> tab(left + width, middleY, half, slant, depth, 0);
          case LEFT -> tab(left, middleY, half, slant, -depth, 0);
        };
    return "<polygon class=\"latch\" points=\"" + points + "\" fill=\"" + INK + "\"/>";
  }

  /** A bar across the wall, for a housing without a latch. */
  String key(Seen seen, LatchDirection direction) {
    double width = seen.widthMm() * scale;
    double height = seen.heightMm() * scale;
    double x =
        switch (direction) {
          case UP, DOWN -> left + width / 2;
          case RIGHT -> left + width;
          case LEFT -> left;
        };
    double y =
        switch (direction) {
          case UP -> top;
          case DOWN -> top + height;
          case RIGHT, LEFT -> top + height / 2;
        };
    double halfX = isUpright(direction) ? 1.2 : 1.7;
    double halfY = isUpright(direction) ? 1.7 : 1.2;
    return rect("key", x - halfX, y - halfY, 2 * halfX, 2 * halfY, 0, INK, "none", 0, "");
  }

  /** The outline, double on the mating side. */
  String wall(Seen seen, boolean round, boolean twice) {
    String outer = outline(seen, round, 0, 0.6);
    return twice ? outer + outline(seen, round, WALL_GAP, 0.25) : outer;
  }

  /** One cavity with its number. */
  String cavity(Spot spot, @Nullable CavityMark mark, boolean round, double larger) {
    double width = spot.widthMm() * scale * larger;
    double height = spot.heightMm() * scale * larger;
    double x = left + spot.x() * scale;
    double y = top + spot.y() * scale;
    StringBuilder svg = new StringBuilder();
    String fill = INK;
    if (mark == CavityMark.SOUGHT) {
      svg.append(octagon("halo", x, y, width + 2.6, height + 2.6, "#fff", "none", 0));
      svg.append(octagon("ring", x, y, width + 1.7, height + 1.7, "#fff", INK, 0.5));
    }
    if (mark == CavityMark.FILLED || mark == CavityMark.SOUGHT) {
      svg.append(octagon("filled", x, y, width, height, INK, INK, 0.3));
      fill = "#fff";
    } else if (round && mark == null) {
      svg.append("<ellipse class=\"free\" cx=\"")
          .append(Svg.number(x))
          .append("\" cy=\"")
          .append(Svg.number(y))
          .append("\" rx=\"")
          .append(Svg.number(width / 2))
          .append("\" ry=\"")
          .append(Svg.number(height / 2))
          .append("\" fill=\"#fff\" stroke=\"#555\" stroke-width=\"0.2\"/>");
    } else {
      boolean plugged = mark == CavityMark.PLUGGED;
      svg.append(
          rect(
              plugged ? "plugged" : "free",
              x - width / 2,
              y - height / 2,
              width,
              height,
              plugged ? 0 : 0.15 * Math.min(width, height),
              plugged ? SHADE : "#fff",
              plugged ? INK : "#555",
              plugged ? 0.3 : 0.2,
              plugged ? " stroke-dasharray=\"0.9 0.6\"" : ""));
      if (plugged) {
        svg.append(corners(x, y, width, height));
      }
    }
    double size =
        Math.min(
            Math.min(0.62 * height, 3.6),
            0.86 * width / (0.64 * Math.max(1, spot.number().length())));
    return svg.append(lettering.line(x, y, size, fill, spot.number())).toString();
  }

  private static boolean isUpright(LatchDirection direction) {
    return direction == LatchDirection.UP || direction == LatchDirection.DOWN;
  }

  private String outline(Seen seen, boolean round, double inset, double stroke) {
    double x = left - inset;
    double y = top - inset;
    double width = seen.widthMm() * scale + 2 * inset;
    double height = seen.heightMm() * scale + 2 * inset;
    return round
        ? "<ellipse class=\"wall\" cx=\""
            + Svg.number(x + width / 2)
            + "\" cy=\""
            + Svg.number(y + height / 2)
            + "\" rx=\""
            + Svg.number(width / 2)
            + "\" ry=\""
            + Svg.number(height / 2)
            + "\" fill=\""
            + (inset == 0 ? "#fff" : "none")
            + "\" stroke=\""
            + INK
            + "\" stroke-width=\""
            + Svg.number(stroke)
            + "\"/>"
        : rect(
            "wall",
            x,
            y,
            width,
            height,
            Math.min(1.6, Math.min(width, height) / 5) + inset,
            inset == 0 ? "#fff" : "none",
            INK,
            stroke,
            "");
  }

  private static String tab(double x, double y, double half, double slant, double dx, double dy) {
    double alongX = dy == 0 ? 0 : 1;
    double alongY = dy == 0 ? 1 : 0;
    double near = half;
    double far = half - slant;
    return point(x - near * alongX, y - near * alongY)
        + " "
        + point(x + near * alongX, y + near * alongY)
        + " "
        + point(x + far * alongX + dx, y + far * alongY + dy)
        + " "
        + point(x - far * alongX + dx, y - far * alongY + dy);
  }

  private static String octagon(
      String name,
      double x,
      double y,
      double width,
      double height,
      String fill,
      String stroke,
      double strokeWidth) {
    double halfX = width / 2;
    double halfY = height / 2;
    double cut = 0.26 * Math.min(width, height);
    String points =
        String.join(
            " ",
            point(x - halfX + cut, y - halfY),
            point(x + halfX - cut, y - halfY),
            point(x + halfX, y - halfY + cut),
            point(x + halfX, y + halfY - cut),
            point(x + halfX - cut, y + halfY),
            point(x - halfX + cut, y + halfY),
            point(x - halfX, y + halfY - cut),
            point(x - halfX, y - halfY + cut));
    return "<polygon class=\""
        + name
        + "\" points=\""
        + points
        + "\" fill=\""
        + fill
        + "\" stroke=\""
        + stroke
        + "\" stroke-width=\""
        + Svg.number(strokeWidth)
        + "\"/>";
  }

  private static String corners(double x, double y, double width, double height) {
    double tick = 0.24 * Math.min(width, height);
    StringBuilder path = new StringBuilder();
    for (int sideX = -1; sideX <= 1; sideX += 2) {
      for (int sideY = -1; sideY <= 1; sideY += 2) {
        double cornerX = x + sideX * width / 2;
        double cornerY = y + sideY * height / 2;
        path.append('M')
            .append(point(cornerX, cornerY))
            .append('L')
            .append(point(cornerX - sideX * tick, cornerY - sideY * tick));
      }
    }
    return "<path d=\"" + path + "\" fill=\"none\" stroke=\"" + INK + "\" stroke-width=\"0.3\"/>";
  }

  private static String rect(
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

  private static String point(double x, double y) {
    return Svg.number(x) + "," + Svg.number(y);
  }
}
