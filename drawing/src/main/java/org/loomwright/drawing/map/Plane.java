package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;

/** Small sums of plane geometry. */
final class Plane {
  /** How much farther out than its distance a line beside another goes at a corner. */
  static final double MITER_MOST = 1.5;

  private Plane() {}

  /** Distance of two points. */
  static double apart(Spot one, Spot other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }

  /** A point on the way from one to the other; 0 is the first, 1 the second. */
  static Spot between(Spot from, Spot to, double share) {
    return new Spot(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
  }

  /** A point moved along a direction in radians; 0 to the right, rising downwards. */
  static Spot away(Spot from, double angle, double by) {
    return new Spot(from.x() + by * Math.cos(angle), from.y() + by * Math.sin(angle));
  }

  /** Direction from one point to another. */
  static double angle(Spot from, Spot to) {
    return Math.atan2(to.y() - from.y(), to.x() - from.x());
  }

  /** An angle as the turn to it from straight on, above -π to π. */
  static double turn(double angle) {
    double turned = Math.IEEEremainder(angle, 2 * Math.PI);
    return turned <= -Math.PI ? Math.PI : turned;
  }

  /** Least distance of a point from a stretch. */
  static double apart(Spot point, Segment line) {
    double dx = line.to().x() - line.from().x();
    double dy = line.to().y() - line.from().y();
    double square = dx * dx + dy * dy;
    double share =
        square == 0
            ? 0
            : ((point.x() - line.from().x()) * dx + (point.y() - line.from().y()) * dy) / square;
    return apart(point, between(line.from(), line.to(), Math.min(1, Math.max(0, share))));
  }

  /** Least distance of two stretches; 0 where they meet. */
  static double apart(Segment one, Segment other) {
    if (cross(one, other)) {
      return 0;
    }
    return Math.min(
        Math.min(apart(one.from(), other), apart(one.to(), other)),
        Math.min(apart(other.from(), one), apart(other.to(), one)));
  }

  /** Whether two stretches cross at a point inside both. */
  static boolean cross(Segment one, Segment other) {
    return side(one, other.from()) * side(one, other.to()) < 0
        && side(other, one.from()) * side(other, one.to()) < 0;
  }

  private static double side(Segment line, Spot point) {
    return Math.signum(
        (line.to().x() - line.from().x()) * (point.y() - line.from().y())
            - (line.to().y() - line.from().y()) * (point.x() - line.from().x()));
  }

  /** Least distance of a point from a box; 0 inside. */
  static double apart(Spot point, Box box) {
    return apart(point, nearest(point, box));
  }

  /** The point of a box nearest to a point. */
  static Spot nearest(Spot point, Box box) {
    return new Spot(
        Math.min(box.right(), Math.max(box.left(), point.x())),
        Math.min(box.bottom(), Math.max(box.top(), point.y())));
  }

  /** Length of a line through points. */
  static double length(List<Spot> line) {
    return Segment.through(line).stream().mapToDouble(Segment::length).sum();
  }

  /** The point of a line at a share of its length, and the direction there. */
  static Facing at(List<Spot> line, double share) {
    double left = share * length(line);
    List<Segment> parts = Segment.through(line);
    for (Segment part : parts) {
      if (left <= part.length() || part.equals(parts.get(parts.size() - 1))) {
        double of = part.length() == 0 ? 0 : Math.min(1, left / part.length());
        return new Facing(between(part.from(), part.to(), of), angle(part.from(), part.to()));
      }
      left -= part.length();
    }
    return new Facing(line.get(0), 0);
  }

  /** A point with a direction. */
  record Facing(Spot at, double angle) {}

  /** A line moved sideways, to the right of its direction; corners stay corners. */
  static List<Spot> beside(List<Spot> line, double by) {
    List<Spot> moved = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Spot here = line.get(i);
      double in = i == 0 ? Double.NaN : angle(line.get(i - 1), here);
      double out = i == line.size() - 1 ? Double.NaN : angle(here, line.get(i + 1));
      if (Double.isNaN(in)) {
        in = out;
      }
      if (Double.isNaN(out)) {
        out = in;
      }
      double half = turn(out - in) / 2;
      // A sharp corner is cut off, so that its tip does not run far out.
      double miter = by * Math.min(MITER_MOST, 1 / Math.max(0.01, Math.cos(half)));
      moved.add(away(here, in + half + Math.PI / 2, miter));
    }
    return moved;
  }
}
