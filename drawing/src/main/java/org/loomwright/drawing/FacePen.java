package org.loomwright.drawing;

import java.util.List;
import org.loomwright.drawing.Seen.Box;
import org.loomwright.drawing.Stroke.At;
import org.loomwright.model.parts.KeyForm;
import org.loomwright.model.vehicle.LatchDirection;

/**
 * What is round the cavities of a face, on paper.
 *
 * @param left where the face starts, mm
 * @param top where the face starts, mm
 * @param scale mm on paper for a mm of the housing
 */
record FacePen(double left, double top, double scale) {
  private static final String INK = Stroke.INK;
  private static final double WALL_GAP = 0.9;
  private static final double SEAL_INSET = 0.75;
  private static final double LOCK_START = 1.2;
  private static final double LOCK_DEPTH = 1.1;
  private static final double LOCK_SHARE = 0.8;
  private static final double STRIPE = 1.4;

  /** Smallest side of a drawn key, so that it is seen, mm. */
  private static final double LEAST_KEY = 0.9;

  /** A tab outside the wall. */
  String latch(Box latch, LatchDirection direction, double depth) {
    double half = (isUpright(direction) ? latch.widthMm() : latch.heightMm()) * scale / 2;
    double far = half - Math.min(1.2, half / 3);
    double x = left + latch.x() * scale;
    double y = top + latch.y() * scale;
    List<At> tab =
        switch (direction) {
          case UP -> tab(x, y, half, far, 0, -depth);
          case DOWN -> tab(x, y, half, far, 0, depth);
          case RIGHT -> tab(x, y, half, far, depth, 0);
          case LEFT -> tab(x, y, half, far, -depth, 0);
        };
    return new Stroke("latch", tab, true, INK, "none", 0, "").svg();
  }

  private static List<At> tab(
      double x, double y, double near, double far, double outX, double outY) {
    double alongX = outY == 0 ? 0 : 1;
    double alongY = outY == 0 ? 1 : 0;
    return List.of(
        new At(x - near * alongX, y - near * alongY),
        new At(x + near * alongX, y + near * alongY),
        new At(x + far * alongX + outX, y + far * alongY + outY),
        new At(x - far * alongX + outX, y - far * alongY + outY));
  }

  /** A bar across the wall, for a housing with neither a latch nor keys on file. */
  String bar(Seen seen, LatchDirection direction) {
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
    return Markup.rect("key", x - halfX, y - halfY, 2 * halfX, 2 * halfY, 0, INK);
  }

  /** A rib as a dark bar, a groove as a light one with a frame. */
  String key(Seen.Ridge key) {
    double width = Math.max(LEAST_KEY, key.box().widthMm() * scale);
    double height = Math.max(LEAST_KEY, key.box().heightMm() * scale);
    double x = left + key.box().x() * scale - width / 2;
    double y = top + key.box().y() * scale - height / 2;
    return key.form() == KeyForm.RIB
        ? Markup.rect("rib", x, y, width, height, 0, INK)
        : Markup.rect("groove", x, y, width, height, 0, "#fff", INK, 0.3, "");
  }

  /** A striped bar along an edge, outside the wall. */
  String lock(Seen seen, Box edge) {
    boolean flat = edge.heightMm() == 0;
    double half = LOCK_SHARE * (flat ? edge.widthMm() : edge.heightMm()) * scale / 2;
    double x = left + edge.x() * scale;
    double y = top + edge.y() * scale;
    boolean after = flat ? edge.y() > seen.heightMm() / 2 : edge.x() > seen.widthMm() / 2;
    double start = after ? LOCK_START : -LOCK_START - LOCK_DEPTH;
    StringBuilder svg =
        new StringBuilder(
            flat
                ? bar("lock", x - half, y + start, 2 * half, LOCK_DEPTH)
                : bar("lock", x + start, y - half, LOCK_DEPTH, 2 * half));
    int stripes = (int) Math.floor(2 * half / STRIPE);
    for (int i = 1; i <= stripes; i++) {
      double at = -half + 2 * half * i / (stripes + 1);
      double slant = LOCK_DEPTH / 2;
      double near = Math.max(-half, at - slant);
      double far = Math.min(half, at + slant);
      svg.append(
          Stroke.line(
                  "stripe",
                  flat ? new At(x + near, y + start) : new At(x + start, y + near),
                  flat
                      ? new At(x + far, y + start + LOCK_DEPTH)
                      : new At(x + start + LOCK_DEPTH, y + far),
                  0.35)
              .svg());
    }
    return svg.toString();
  }

  private static String bar(String name, double x, double y, double width, double height) {
    return Markup.rect(name, x, y, width, height, 0, "#fff", INK, 0.3, "");
  }

  /** The outline, double on the mating side. */
  String wall(Seen seen, boolean twice) {
    String outer = outline("wall", seen, 0, "#fff", 0.6, "");
    return twice ? outer + outline("wall", seen, WALL_GAP, "none", 0.25, "") : outer;
  }

  /** A dotted line inside the wall. */
  String seal(Seen seen) {
    return outline(
        "seal",
        seen,
        -SEAL_INSET,
        "none",
        0.45,
        " stroke-dasharray=\"0 0.9\" stroke-linecap=\"round\"");
  }

  private String outline(
      String name, Seen seen, double grown, String fill, double stroke, String more) {
    double width = seen.widthMm() * scale;
    double height = seen.heightMm() * scale;
    return seen.round()
        ? Markup.ellipse(
            name,
            left + width / 2,
            top + height / 2,
            width / 2 + grown,
            height / 2 + grown,
            fill,
            stroke,
            more)
        : Markup.rect(
            name,
            left - grown,
            top - grown,
            width + 2 * grown,
            height + 2 * grown,
            Math.max(0.2, Math.min(1.6, Math.min(width, height) / 5) + grown),
            fill,
            INK,
            stroke,
            more);
  }

  private static boolean isUpright(LatchDirection direction) {
    return direction == LatchDirection.UP || direction == LatchDirection.DOWN;
  }
}
