package org.loomwright.model.picture;

import java.util.List;

/**
 * Where the points of a flat face lie in a photo of it.
 *
 * <p>Symbols: (x, y) a point of the face, mm; (u, v) the same point in the photo, px; H a matrix of
 * 3 × 3. With (a, b, w) = H (x, y, 1) it is u = a / w and v = b / w. A camera without distortion
 * shows a plane exactly so. H is found from pairs of points by least squares of the distance in the
 * photo: from three, or from more that don't fix a perspective, with w = 1 everywhere (affine);
 * else by the linear equations of the perspective map, then steps of Gauss and Newton. Points are
 * moved to their middle and scaled first, as is usual for such systems.
 */
public final class PhotoMap {
  /** Points are on one line when they spread less than this share across it. */
  private static final double FLAT = 0.02;

  private static final int STEPS = 12;

  private final double[][] matrix;
  private final List<Pair> pairs;
  private final boolean perspective;

  private PhotoMap(double[][] matrix, List<Pair> pairs, boolean perspective) {
    this.matrix = matrix;
    this.pairs = pairs;
    this.perspective = perspective;
  }

  /**
   * A point known in both.
   *
   * @param x point of the face, mm to the right
   * @param y point of the face, mm downwards
   * @param u point of the photo, px to the right
   * @param v point of the photo, px downwards
   */
  public record Pair(double x, double y, double u, double v) {}

  /** A point, mm on the face or px in the photo. */
  public record Point(double x, double y) {}

  /**
   * The map that fits pairs best.
   *
   * @param pairs three or more
   * @throws IllegalArgumentException when there are fewer, or all lie on one line in the face or in
   *     the photo
   */
  public static PhotoMap fit(List<Pair> pairs) {
    if (pairs.size() < 3) {
      throw new IllegalArgumentException("three points are the fewest; there are " + pairs.size());
    }
    List<Point> face = pairs.stream().map(it -> new Point(it.x(), it.y())).toList();
    List<Point> photo = pairs.stream().map(it -> new Point(it.u(), it.v())).toList();
    if (PointSpread.share(face) < FLAT || PointSpread.share(photo) < FLAT) {
      throw new IllegalArgumentException(
          "the points lie on one line, so they don't say how the face is turned about it");
    }
    boolean perspective = fixesPerspective(face) && fixesPerspective(photo);
    PointSpread from = PointSpread.of(face);
    PointSpread to = PointSpread.of(photo);
    List<Pair> even =
        pairs.stream()
            .map(
                it ->
                    new Pair(
                        from.evenX(it.x()), from.evenY(it.y()), to.evenX(it.u()), to.evenY(it.v())))
            .toList();
    double[] unknowns = solve(even, perspective ? 8 : 6, new double[8]);
    for (int step = 0; perspective && step < STEPS; step++) {
      unknowns = solve(even, 8, unknowns);
    }
    double[][] matrix = product(to.back(), product(square(unknowns), from.forth()));
    double middle = depth(matrix, from.middleX(), from.middleY());
    for (double[] row : matrix) {
      for (int i = 0; i < row.length; i++) {
        row[i] /= middle;
      }
    }
    return new PhotoMap(matrix, List.copyOf(pairs), perspective);
  }

  /** Where a point of the face lies in the photo, px. */
  public Point at(double x, double y) {
    double w = depth(matrix, x, y);
    return new Point(
        (matrix[0][0] * x + matrix[0][1] * y + matrix[0][2]) / w,
        (matrix[1][0] * x + matrix[1][1] * y + matrix[1][2]) / w);
  }

  /** True where the camera could see the face: the point is not behind it. */
  public boolean isInFront(double x, double y) {
    return depth(matrix, x, y) > 0;
  }

  /**
   * Signed area in the photo of a square millimetre of the face there, px² for a mm²; negative when
   * the photo shows the mirror image.
   */
  public double areaPx2(double x, double y) {
    // The determinant of H over w³, which is what differentiating u and v comes to.
    double w = depth(matrix, x, y);
    return determinant() / (w * w * w);
  }

  /** Distance in the photo between a pair's point and where the map puts it, px. */
  public double missPx(int pair) {
    Pair it = pairs.get(pair);
    Point at = at(it.x(), it.y());
    return Math.hypot(at.x() - it.u(), at.y() - it.v());
  }

  /** The same as a distance on the face, mm. */
  public double missMm(int pair) {
    Pair it = pairs.get(pair);
    return missPx(pair) / Math.sqrt(Math.abs(areaPx2(it.x(), it.y())));
  }

  /** The pair that fits worst. */
  public int worst() {
    int worst = 0;
    for (int i = 1; i < pairs.size(); i++) {
      if (missMm(i) > missMm(worst)) {
        worst = i;
      }
    }
    return worst;
  }

  /** True when there are more pairs than the map needs, so that a wrong one can be noticed. */
  public boolean isChecked() {
    return pairs.size() > (perspective ? 4 : 3);
  }

  private double determinant() {
    double[][] m = matrix;
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }

  private static double depth(double[][] matrix, double x, double y) {
    return matrix[2][0] * x + matrix[2][1] * y + matrix[2][2];
  }

  /** Four points of which no three are on a line: what is left without any one is not flat. */
  private static boolean fixesPerspective(List<Point> points) {
    for (int i = 0; i < points.size(); i++) {
      List<Point> others = new java.util.ArrayList<>(points);
      others.remove(i);
      if (others.size() < 3 || PointSpread.share(others) < FLAT) {
        return false;
      }
    }
    return true;
  }

  /**
   * Better unknowns: of the linear equations when those given are all zero, else one step of Gauss
   * and Newton from them.
   */
  private static double[] solve(List<Pair> pairs, int count, double[] before) {
    double[][] normal = new double[count][count + 1];
    boolean first = java.util.Arrays.stream(before).allMatch(it -> it == 0);
    for (Pair it : pairs) {
      double w = before[6] * it.x() + before[7] * it.y() + 1;
      // At first the photo's own point stands for the one reckoned, which makes it linear.
      double u = first ? it.u() : (before[0] * it.x() + before[1] * it.y() + before[2]) / w;
      double v = first ? it.v() : (before[3] * it.x() + before[4] * it.y() + before[5]) / w;
      double x = it.x() / w;
      double y = it.y() / w;
      double missU = first ? it.u() : it.u() - u;
      double missV = first ? it.v() : it.v() - v;
      add(normal, new double[] {x, y, 1 / w, 0, 0, 0, -u * x, -u * y}, missU);
      add(normal, new double[] {0, 0, 0, x, y, 1 / w, -v * x, -v * y}, missV);
    }
    double[] change = eliminate(normal);
    double[] after = before.clone();
    for (int i = 0; i < count; i++) {
      after[i] += change[i];
    }
    return after;
  }

  private static void add(double[][] normal, double[] row, double value) {
    int count = normal.length;
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < count; k++) {
        normal[i][k] += row[i] * row[k];
      }
      normal[i][count] += row[i] * value;
    }
  }

  /** Gauss with the largest pivot of each column. */
  private static double[] eliminate(double[][] rows) {
    int count = rows.length;
    for (int column = 0; column < count; column++) {
      int pivot = column;
      for (int i = column + 1; i < count; i++) {
        if (Math.abs(rows[i][column]) > Math.abs(rows[pivot][column])) {
          pivot = i;
        }
      }
      double[] swap = rows[column];
      rows[column] = rows[pivot];
      rows[pivot] = swap;
      for (int i = 0; i < count; i++) {
        double factor = i == column ? 0 : rows[i][column] / rows[column][column];
        for (int k = column; k <= count && factor != 0; k++) {
          rows[i][k] -= factor * rows[column][k];
        }
      }
    }
    double[] unknowns = new double[count];
    for (int i = 0; i < count; i++) {
      unknowns[i] = rows[i][count] / rows[i][i];
    }
    return unknowns;
  }

  private static double[][] square(double[] h) {
    return new double[][] {{h[0], h[1], h[2]}, {h[3], h[4], h[5]}, {h[6], h[7], 1}};
  }

  private static double[][] product(double[][] a, double[][] b) {
    double[][] c = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        c[i][k] = a[i][0] * b[0][k] + a[i][1] * b[1][k] + a[i][2] * b[2][k];
      }
    }
    return c;
  }
}
