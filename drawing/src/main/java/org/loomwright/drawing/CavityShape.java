package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.loomwright.drawing.Stroke.At;

/**
 * The shape that tells a mark, about the middle of its cavity.
 *
 * @param width width of the cavity
 * @param height height of the cavity
 * @param round whether the cavity is round
 */
record CavityShape(double width, double height, boolean round) {
  private static final String SHADE = "#ddd";
  private static final String PALE = "#fff";
  private static final int ROUND_CORNERS = 32;

  /** Room a frame within the frame leaves, as share of the smaller side. */
  private static final double INNER = 0.1;

  /**
   * Lines and areas, to be drawn in this order.
   *
   * @param mark mark; null for a cavity of which nothing is told
   * @param ring how far outside the ring round the one meant is
   */
  List<Stroke> strokes(@Nullable CavityMark mark, double ring) {
    List<Stroke> strokes = new ArrayList<>();
    if (mark == null) {
      strokes.add(new Stroke("free", frame(0), true, PALE, "#555", 0.2, ""));
      return strokes;
    }
    switch (mark) {
      case FILLED -> strokes.add(Stroke.area("filled", octagon(0), Stroke.INK, 0.3, ""));
      case SOUGHT -> {
        strokes.add(new Stroke("halo", octagon(1.5 * ring), true, PALE, "none", 0, ""));
        strokes.add(Stroke.area("ring", octagon(ring), PALE, 0.5, ""));
        strokes.add(Stroke.area("filled", octagon(0), Stroke.INK, 0.3, ""));
      }
      case WIRED -> {
        strokes.add(Stroke.area("wired", frame(0), PALE, 0.25, ""));
        strokes.add(Stroke.area("inner", frame(-INNER * smaller()), PALE, 0.25, ""));
      }
      case LOOSE -> {
        strokes.add(Stroke.area("loose", frame(0), PALE, 0.25, ""));
        strokes.add(Stroke.area("corner", corner(-1), Stroke.INK, 0.1, ""));
        strokes.add(Stroke.area("corner", corner(1), Stroke.INK, 0.1, ""));
      }
      case EMPTY -> strokes.add(Stroke.area("empty", frame(0), PALE, 0.55, ""));
      case PLUGGED -> {
        strokes.add(Stroke.area("plugged", frame(0), SHADE, 0.3, "0.9 0.6"));
        strokes.addAll(diagonals("struck", 0.8));
      }
      case BLOCKED -> {
        strokes.add(Stroke.area("blocked", frame(0), SHADE, 0.3, ""));
        strokes.addAll(diagonals("crossed", 1));
      }
      case UNKNOWN -> strokes.add(Stroke.area("unknown", frame(0), PALE, 0.45, "0 0.8"));
    }
    return strokes;
  }

  /** Width the number may take, as share of the cavity's. */
  double numberWidth(@Nullable CavityMark mark) {
    double inner = mark == CavityMark.WIRED ? 1 - 2 * INNER * smaller() / width : 1;
    return 0.86 * inner * (round && mark == CavityMark.LOOSE ? 0.8 : 1);
  }

  /** Font size the number may have, as share of the cavity's height. */
  double numberHeight(@Nullable CavityMark mark) {
    double inner = mark == CavityMark.WIRED ? 1 - 2 * INNER * smaller() / height : 1;
    return 0.62 * inner;
  }

  private double smaller() {
    return Math.min(width, height);
  }

  /** The cavity's outline, grown on all sides. */
  private List<At> frame(double grown) {
    double halfX = width / 2 + grown;
    double halfY = height / 2 + grown;
    if (!round) {
      return List.of(
          new At(-halfX, -halfY),
          new At(halfX, -halfY),
          new At(halfX, halfY),
          new At(-halfX, halfY));
    }
    List<At> points = new ArrayList<>();
    for (int i = 0; i < ROUND_CORNERS; i++) {
      points.add(onOutline(2 * Math.PI * i / ROUND_CORNERS, halfX, halfY));
    }
    return points;
  }

  private static At onOutline(double angle, double halfX, double halfY) {
    return new At(halfX * Math.cos(angle), halfY * Math.sin(angle));
  }

  private List<At> octagon(double grown) {
    double halfX = width / 2 + grown;
    double halfY = height / 2 + grown;
    double cut = 0.52 * Math.min(halfX, halfY);
    return List.of(
        new At(-halfX + cut, -halfY),
        new At(halfX - cut, -halfY),
        new At(halfX, -halfY + cut),
        new At(halfX, halfY - cut),
        new At(halfX - cut, halfY),
        new At(-halfX + cut, halfY),
        new At(-halfX, halfY - cut),
        new At(-halfX, -halfY + cut));
  }

  /** The corner at the top left, or with -1 at the bottom right. */
  private List<At> corner(int sign) {
    double halfX = width / 2;
    double halfY = height / 2;
    List<At> points = new ArrayList<>();
    if (round) {
      for (int i = -3; i <= 3; i++) {
        At at = onOutline(Math.toRadians(45 + 12 * i), halfX, halfY);
        points.add(new At(-sign * at.x(), -sign * at.y()));
      }
    } else {
      double leg = 0.3 * smaller();
      points.add(new At(-sign * halfX, -sign * halfY));
      points.add(new At(-sign * (halfX - leg), -sign * halfY));
      points.add(new At(-sign * halfX, -sign * (halfY - leg)));
    }
    return points;
  }

  /** Lines from the corners towards the middle; with a share of 1 they cross. */
  private List<Stroke> diagonals(String name, double share) {
    double reach = round ? Math.sqrt(0.5) : 1;
    List<Stroke> strokes = new ArrayList<>();
    for (int x = -1; x <= 1; x += 2) {
      for (int y = -1; y <= 1; y += 2) {
        At corner = new At(x * reach * width / 2, y * reach * height / 2);
        double inX = x * share * smaller() / 2;
        double inY = y * share * smaller() / 2;
        At end =
            share >= 1
                ? new At(0, 0)
                : new At(corner.x() - inX * 0.5 * reach, corner.y() - inY * 0.5 * reach);
        strokes.add(Stroke.line(name, corner, end, 0.3));
      }
    }
    return strokes;
  }
}
