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

  /** Farthest a key is drawn beyond the wall, mm. */
  private static final double MOST_OUT = 2.2;

  /** Smallest side of a drawn key, so that it is seen, mm. */
  private static final double LEAST_KEY = 0.9;

  /** A tab outside the wall. */
  String latch(Seen seen, Box latch, LatchDirection direction, double depth) {
    double edge = (isUpright(direction) ? seen.widthMm() : seen.heightMm()) * scale;
    double at = (isUpright(direction) ? latch.x() : latch.y()) * scale;
    double wanted = (isUpright(direction) ? latch.widthMm() : latch.heightMm()) * scale / 2;
    // Beyond the corners there is nothing to hold it.
    double half = Math.min(wanted, Math.min(at, edge - at) + MOST_OUT);
    double far = half - Math.min(1.2, half / 3);
    // On a round face the edge falls back beside the middle; the wall, drawn later, hides the rest.
    double off = 2 * at / edge - 1;
    double across = (isUpright(direction) ? seen.heightMm() : seen.widthMm()) * scale;
    double back = seen.round() ? across / 2 * (1 - Math.sqrt(Math.max(0, 1 - off * off))) : 0;
    double root = seen.round() ? across / 4 : 0;
    double x = left + latch.x() * scale;
    double y = top + latch.y() * scale;
    List<At> tab =
        switch (direction) {
          case UP -> tab(new At(x, y + back), new At(1, 0), new At(0, -1), half, far, depth, root);
          case DOWN -> tab(new At(x, y - back), new At(1, 0), new At(0, 1), half, far, depth, root);
          case RIGHT ->
              tab(new At(x - back, y), new At(0, 1), new At(1, 0), half, far, depth, root);
          case LEFT ->
              tab(new At(x + back, y), new At(0, 1), new At(-1, 0), half, far, depth, root);
        };
    return new Stroke("latch", tab, true, INK, "none", 0, "").svg();
  }

  /**
   * Corners of a tab.
   *
   * @param foot middle of its foot
   * @param along along the edge
   * @param out away from the face
   * @param near half its width at the foot
   * @param far half its width at the end
   * @param depth how far out it reaches
   * @param root how far it goes on inwards
   */
  private static List<At> tab(
      At foot, At along, At out, double near, double far, double depth, double root) {
    return List.of(
        corner(foot, along, -near, out, -root),
        corner(foot, along, -near, out, 0),
        corner(foot, along, -far, out, depth),
        corner(foot, along, far, out, depth),
        corner(foot, along, near, out, 0),
        corner(foot, along, near, out, -root));
  }

  private static At corner(At foot, At along, double aside, At out, double away) {
    return new At(
        foot.x() + aside * along.x() + away * out.x(),
        foot.y() + aside * along.y() + away * out.y());
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
  String key(Seen seen, Seen.Ridge key) {
    double width = Math.max(LEAST_KEY, key.box().widthMm() * scale);
    double height = Math.max(LEAST_KEY, key.box().heightMm() * scale);
    double x = left + key.box().x() * scale;
    double y = top + key.box().y() * scale;
    double startX = Math.max(x - width / 2, left - MOST_OUT);
    double startY = Math.max(y - height / 2, top - MOST_OUT);
    double endX = Math.min(x + width / 2, left + seen.widthMm() * scale + MOST_OUT);
    double endY = Math.min(y + height / 2, top + seen.heightMm() * scale + MOST_OUT);
    return key.form() == KeyForm.RIB
        ? Markup.rect("rib", startX, startY, endX - startX, endY - startY, 0, INK)
        : bar("groove", startX, startY, endX - startX, endY - startY);
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
