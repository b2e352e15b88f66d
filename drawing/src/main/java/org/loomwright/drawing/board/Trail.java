package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;

/**
 * A line being drawn from a point, straight on or round a bend. Never changed: each move gives a
 * new trail.
 *
 * @param points so far
 * @param headingDegrees where it looks: 0 right, 90 down; a multiple of 45
 * @param lengthMm so far
 * @param bends bends of any angle so far
 */
record Trail(List<Point> points, int headingDegrees, double lengthMm, int bends) {
  private static final double CHORD_DEGREES = 7.5;

  static Trail at(Point start, int headingDegrees) {
    return new Trail(List.of(start), Math.floorMod(headingDegrees, 360), 0, 0);
  }

  Point tip() {
    return points.get(points.size() - 1);
  }

  /** Straight on. */
  Trail on(double mm) {
    if (mm <= 0) {
      return this;
    }
    List<Point> more = new ArrayList<>(points);
    more.add(tip().plus(mm * dx(headingDegrees), mm * dy(headingDegrees)));
    return new Trail(more, headingDegrees, lengthMm + mm, bends);
  }

  /** Round a bend, clockwise as seen where the angle is positive. */
  Trail turn(int degrees, double radiusMm) {
    int chords = (int) Math.round(Math.abs(degrees) / CHORD_DEGREES);
    double step = Math.copySign(CHORD_DEGREES, degrees);
    double chordMm = chordMm(radiusMm);
    List<Point> more = new ArrayList<>(points);
    Point at = tip();
    for (int i = 0; i < chords; i++) {
      double angle = Math.toRadians(headingDegrees + step * (i + 0.5));
      at = at.plus(chordMm * Math.cos(angle), chordMm * Math.sin(angle));
      more.add(at);
    }
    return new Trail(
        more, Math.floorMod(headingDegrees + degrees, 360), lengthMm + chords * chordMm, bends + 1);
  }

  /** How much of a branch a bend takes, mm. */
  static double turnMm(int degrees, double radiusMm) {
    return Math.abs(degrees) / CHORD_DEGREES * chordMm(radiusMm);
  }

  private static double chordMm(double radiusMm) {
    return 2 * radiusMm * Math.sin(Math.toRadians(CHORD_DEGREES / 2));
  }

  /** Part of a heading to the right; exact for the four main ones. */
  static double dx(int degrees) {
    return switch (Math.floorMod(degrees, 360)) {
      case 0 -> 1;
      case 180 -> -1;
      case 90, 270 -> 0;
      default -> Math.cos(Math.toRadians(degrees));
    };
  }

  /** Part of a heading downwards; exact for the four main ones. */
  static double dy(int degrees) {
    return dx(degrees - 90);
  }
}
