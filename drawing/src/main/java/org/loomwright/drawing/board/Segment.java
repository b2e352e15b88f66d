package org.loomwright.drawing.board;

import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.Line;

/**
 * A straight stretch of a line, for the checker, which shares no sums with the layout.
 *
 * @param a its start
 * @param b its end
 * @param fromMm length of the line before it, counted from the end of the line that is nearer along
 *     the harness to what it is compared with
 * @param isBackward whether lengths are counted from the line's last point, so that {@code b} comes
 *     before {@code a}
 */
record Segment(Point a, Point b, double fromMm, boolean isBackward) {

  /** The stretch that ends at a point of a line, with the line's length before it. */
  Segment(Line line, int index, double beforeMm, boolean isFromFirst) {
    this(
        line.points().get(index - 1),
        line.points().get(index),
        isFromFirst
            ? beforeMm
            : Math.max(
                0,
                line.toMm()
                    - line.fromMm()
                    - beforeMm
                    - line.points().get(index - 1).distanceMm(line.points().get(index))),
        !isFromFirst);
  }

  double lengthMm() {
    return Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
  }

  boolean isAtStart() {
    return fromMm < 1e-6;
  }

  /** Quick and sure: their upright boxes are farther apart than that. */
  boolean isFarFrom(Segment other, double mm) {
    return Math.min(a.xMm(), b.xMm()) - Math.max(other.a.xMm(), other.b.xMm()) > mm
        || Math.min(other.a.xMm(), other.b.xMm()) - Math.max(a.xMm(), b.xMm()) > mm
        || Math.min(a.yMm(), b.yMm()) - Math.max(other.a.yMm(), other.b.yMm()) > mm
        || Math.min(other.a.yMm(), other.b.yMm()) - Math.max(a.yMm(), b.yMm()) > mm;
  }

  /** Whether two stretches that leave one point do so at less than 40°. */
  boolean headsLike(Segment other) {
    double mine = heading();
    double its = other.heading();
    return Math.abs(Math.IEEEremainder(mine - its, 2 * Math.PI)) < Math.toRadians(40);
  }

  private double heading() {
    double angle = Math.atan2(b.yMm() - a.yMm(), b.xMm() - a.xMm());
    return isBackward ? angle + Math.PI : angle;
  }

  /** What of it lies farther along than that; empty where nothing does. */
  Optional<Segment> beyond(double mm) {
    if (mm <= fromMm) {
      return Optional.of(this);
    }
    double share = (mm - fromMm) / lengthMm();
    if (!(share < 1)) {
      return Optional.empty();
    }
    return Optional.of(
        isBackward
            ? new Segment(a, along(1 - share), mm, true)
            : new Segment(along(share), b, mm, false));
  }

  private Point along(double share) {
    return new Point(
        a.xMm() * (1 - share) + b.xMm() * share, a.yMm() * (1 - share) + b.yMm() * share);
  }

  /** Shortest distance of two stretches; 0 where they cross. */
  double distanceMm(Segment other) {
    if (crosses(a, b, other.a, other.b)) {
      return 0;
    }
    return Math.min(
        Math.min(toStretch(a, other.a, other.b), toStretch(b, other.a, other.b)),
        Math.min(toStretch(other.a, a, b), toStretch(other.b, a, b)));
  }

  /** Shortest distance of a stretch to an upright box; 0 where it enters it. */
  static double toBoxMm(Point a, Point b, Box box) {
    Point one = new Point(box.xMm(), box.yMm());
    Point two = new Point(box.xMm() + box.widthMm(), box.yMm());
    Point three = new Point(two.xMm(), box.yMm() + box.heightMm());
    Point four = new Point(box.xMm(), three.yMm());
    boolean holdsStart =
        a.xMm() >= one.xMm()
            && a.xMm() <= three.xMm()
            && a.yMm() >= one.yMm()
            && a.yMm() <= three.yMm();
    if (holdsStart) {
      return 0;
    }
    Segment mine = new Segment(a, b, 0, false);
    double least = mine.distanceMm(new Segment(one, two, 0, false));
    least = Math.min(least, mine.distanceMm(new Segment(two, three, 0, false)));
    least = Math.min(least, mine.distanceMm(new Segment(three, four, 0, false)));
    return Math.min(least, mine.distanceMm(new Segment(four, one, 0, false)));
  }

  private static boolean crosses(Point a, Point b, Point c, Point d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Point a, Point b, Point c) {
    return Math.signum(
        (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm()));
  }

  private static double toStretch(Point point, Point a, Point b) {
    double length = a.distanceMm(b);
    if (length == 0) {
      return point.distanceMm(a);
    }
    double alongX = (b.xMm() - a.xMm()) / length;
    double alongY = (b.yMm() - a.yMm()) / length;
    double along = (point.xMm() - a.xMm()) * alongX + (point.yMm() - a.yMm()) * alongY;
    double kept = Math.max(0, Math.min(length, along));
    return Math.hypot(point.xMm() - a.xMm() - kept * alongX, point.yMm() - a.yMm() - kept * alongY);
  }
}
