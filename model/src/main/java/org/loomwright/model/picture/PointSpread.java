package org.loomwright.model.picture;

import java.util.List;
import org.loomwright.model.picture.PhotoMap.Point;

/**
 * Middle and spread of points, to bring numbers of very different size to about one.
 *
 * @param middleX mean
 * @param middleY mean
 * @param size root of the mean square of the distances from the middle, at least tiny
 */
record PointSpread(double middleX, double middleY, double size) {

  static PointSpread of(List<Point> points) {
    double x = points.stream().mapToDouble(Point::x).average().orElse(0);
    double y = points.stream().mapToDouble(Point::y).average().orElse(0);
    double square =
        points.stream()
            .mapToDouble(it -> (it.x() - x) * (it.x() - x) + (it.y() - y) * (it.y() - y))
            .average()
            .orElse(0);
    return new PointSpread(x, y, Math.max(Math.sqrt(square), 1e-9));
  }

  double evenX(double x) {
    return (x - middleX) / size;
  }

  double evenY(double y) {
    return (y - middleY) / size;
  }

  /** The same as a matrix. */
  double[][] forth() {
    return new double[][] {
      {1 / size, 0, -middleX / size}, {0, 1 / size, -middleY / size}, {0, 0, 1}
    };
  }

  /** Its inverse. */
  double[][] back() {
    return new double[][] {{size, 0, middleX}, {0, size, middleY}, {0, 0, 1}};
  }

  /**
   * Spread across the line that fits points best, over the spread along it; 0 when all are on it.
   * The root of the ratio of the eigenvalues of their scatter.
   */
  static double share(List<Point> points) {
    PointSpread spread = of(points);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Point it : points) {
      double x = spread.evenX(it.x());
      double y = spread.evenY(it.y());
      xx += x * x;
      xy += x * y;
      yy += y * y;
    }
    double half = (xx + yy) / 2;
    double root = Math.hypot((xx - yy) / 2, xy);
    return half + root == 0 ? 0 : Math.sqrt(Math.max(0, half - root) / (half + root));
  }
}
