package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
  private static final double HALF_CHORD_DEGREES = CHORD_DEGREES / 2;

  private static final double CHORD_SINE = Math.sin(Math.toRadians(HALF_CHORD_DEGREES));

  /** All directions that a chord can have, by steps of half a chord's turn. */
  private static final List<Point> UNITS =
      IntStream.range(0, (int) Math.round(360 / HALF_CHORD_DEGREES))
          .mapToDouble(i -> Math.toRadians(i * HALF_CHORD_DEGREES))
          .mapToObj(angle -> new Point(Math.cos(angle), Math.sin(angle)))
          .toList();

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
    int side = degrees < 0 ? -1 : 1;
    int half = (int) Math.round(headingDegrees / HALF_CHORD_DEGREES);
    double chordMm = chordMm(radiusMm);
    List<Point> more = new ArrayList<>(points);
    Point at = tip();
    for (int i = 0; i < chords; i++) {
      Point unit = UNITS.get(Math.floorMod(half + side * (2 * i + 1), UNITS.size()));
      at = at.plus(chordMm * unit.xMm(), chordMm * unit.yMm());
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
    return 2 * radiusMm * CHORD_SINE;
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
