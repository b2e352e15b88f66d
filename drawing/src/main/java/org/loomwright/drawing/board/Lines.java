package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Sums about polylines. */
final class Lines {
  private Lines() {}

  static double lengthMm(List<Point> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i).distanceMm(line.get(i - 1));
    }
    return sum;
  }

  static List<Point> reversed(List<Point> line) {
    List<Point> back = new ArrayList<>(line);
    Collections.reverse(back);
    return back;
  }

  /** The part of a line between two lengths from its start; empty where there is none. */
  static List<Point> between(List<Point> line, double fromMm, double toMm) {
    List<Point> part = new ArrayList<>();
    double soFar = 0;
    for (int i = 1; i < line.size(); i++) {
      Point start = line.get(i - 1);
      Point end = line.get(i);
      double length = start.distanceMm(end);
      double from = Math.max(0, fromMm - soFar);
      double to = Math.min(length, toMm - soFar);
      if (to > from && length > 0) {
        if (part.isEmpty()) {
          part.add(share(start, end, from / length));
        }
        part.add(to == length ? end : share(start, end, to / length));
      }
      soFar += length;
    }
    return part;
  }

  /** The point of a line at a length from its start, and the line's direction there, degrees. */
  static Place place(List<Point> line, double atMm) {
    double soFar = 0;
    for (int i = 1; i < line.size(); i++) {
      Point start = line.get(i - 1);
      Point end = line.get(i);
      double length = start.distanceMm(end);
      if (atMm <= soFar + length || i == line.size() - 1) {
        double heading =
            Math.toDegrees(Math.atan2(end.yMm() - start.yMm(), end.xMm() - start.xMm()));
        return new Place(share(start, end, (atMm - soFar) / length), heading);
      }
      soFar += length;
    }
    return new Place(line.get(0), 0);
  }

  /** A point with a direction. */
  record Place(Point at, double headingDegrees) {
    /** A point beside this one, to the right of the direction for a positive distance. */
    Point beside(double mm) {
      double angle = Math.toRadians(headingDegrees + 90);
      return at.plus(mm * Math.cos(angle), mm * Math.sin(angle));
    }
  }

  static Box around(List<Point> line) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Point point : line) {
      left = Math.min(left, point.xMm());
      top = Math.min(top, point.yMm());
      right = Math.max(right, point.xMm());
      bottom = Math.max(bottom, point.yMm());
    }
    return new Box(left, top, right - left, bottom - top);
  }

  /** Whether two lines come nearer than a distance. */
  static boolean nearer(List<Point> one, List<Point> other, double mm) {
    if (one.size() < 2 || other.size() < 2) {
      return false;
    }
    Box reach = around(other).grown(mm);
    for (int i = 1; i < one.size(); i++) {
      Point a = one.get(i - 1);
      Point b = one.get(i);
      if (!near(a, b, reach)) {
        continue;
      }
      for (int k = 1; k < other.size(); k++) {
        if (isNearer(a, b, other.get(k - 1), other.get(k), mm)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a line comes nearer to a box than a distance. */
  static boolean nearer(List<Point> line, Box around, Box box, double mm) {
    if (!around.isNearer(box, mm)) {
      return false;
    }
    Box reach = box.grown(mm);
    for (int i = 1; i < line.size(); i++) {
      if (near(line.get(i - 1), line.get(i), reach)
          && isNearer(line.get(i - 1), line.get(i), box, mm)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isNearer(Point a, Point b, Box box, double mm) {
    boolean startsInside =
        a.xMm() >= box.xMm()
            && a.xMm() <= box.rightMm()
            && a.yMm() >= box.yMm()
            && a.yMm() <= box.bottomMm();
    Point upperLeft = new Point(box.xMm(), box.yMm());
    Point upperRight = new Point(box.rightMm(), box.yMm());
    Point lowerLeft = new Point(box.xMm(), box.bottomMm());
    Point lowerRight = new Point(box.rightMm(), box.bottomMm());
    return startsInside
        || isNearer(a, b, upperLeft, upperRight, mm)
        || isNearer(a, b, lowerLeft, lowerRight, mm)
        || isNearer(a, b, upperLeft, lowerLeft, mm)
        || isNearer(a, b, upperRight, lowerRight, mm);
  }

  private static boolean isNearer(Point a, Point b, Point c, Point d, double mm) {
    double square = mm * mm;
    return squareMm(a, c, d) < square
        || squareMm(b, c, d) < square
        || squareMm(c, a, b) < square
        || squareMm(d, a, b) < square
        || (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0);
  }

  /** Square of the shortest distance of a point to a stretch. */
  private static double squareMm(Point point, Point a, Point b) {
    double dx = b.xMm() - a.xMm();
    double dy = b.yMm() - a.yMm();
    double fromX = point.xMm() - a.xMm();
    double fromY = point.yMm() - a.yMm();
    double square = dx * dx + dy * dy;
    double share = square == 0 ? 0 : Math.max(0, Math.min(1, (fromX * dx + fromY * dy) / square));
    double offX = fromX - share * dx;
    double offY = fromY - share * dy;
    return offX * offX + offY * offY;
  }

  private static boolean near(Point a, Point b, Box box) {
    return Math.max(a.xMm(), b.xMm()) >= box.xMm()
        && Math.min(a.xMm(), b.xMm()) <= box.rightMm()
        && Math.max(a.yMm(), b.yMm()) >= box.yMm()
        && Math.min(a.yMm(), b.yMm()) <= box.bottomMm();
  }

  private static double cross(Point a, Point b, Point c) {
    return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm());
  }

  private static Point share(Point a, Point b, double share) {
    return new Point(a.xMm() + share * (b.xMm() - a.xMm()), a.yMm() + share * (b.yMm() - a.yMm()));
  }
}
