package org.loomwright.physics.packing;

/**
 * Radii that a circle round given circles cannot fall below. The largest of these counts:
 *
 * <ul>
 *   <li>area: R ≥ √Σr²;
 *   <li>the two largest side by side: R ≥ r1 + r2;
 *   <li>the three largest: exact, r1 + r2 where the third lies beside them, otherwise the circle
 *       touched by three that touch each other (Descartes 1643);
 *   <li>the k largest, each taken as small as the k-th: n circles whose centres are at least d
 *       apart in a disc of radius ρ obey n ≤ (2/√3) π ρ²/d² + π ρ/d + 1 (Groemer 1960, Oler 1961);
 *       and up to 13 and for 19 of them the smallest circle is proven ({@link EqualWires}).
 * </ul>
 */
final class PackingBound {
  static final String SOURCE =
      "area; Descartes 1643 for the three largest; Groemer 1960, Oler 1961 and proven"
          + " packings of equal circles for the k largest";

  private PackingBound() {}

  /**
   * The bound.
   *
   * @param radii at least one, largest first, any unit
   */
  static double of(double[] radii) {
    double squares = 0;
    double bound = radii[0];
    for (int k = 1; k <= radii.length; k++) {
      squares += radii[k - 1] * radii[k - 1];
      bound = Math.max(bound, radii[k - 1] * Math.max(equal(k), EqualWires.provenRatio(k)));
    }
    if (radii.length > 1) {
      bound = Math.max(bound, radii[0] + radii[1]);
    }
    if (radii.length > 2) {
      bound = Math.max(bound, three(radii[0], radii[1], radii[2]));
    }
    return Math.max(bound, Math.sqrt(squares));
  }

  /** Groemer and Oler for n circles of radius 1: with t = ρ/d and d = 2, R = 1 + 2 t. */
  private static double equal(int n) {
    double square = 2 * Math.PI / Math.sqrt(3);
    double t = (-Math.PI + Math.sqrt(Math.PI * Math.PI + 4 * square * (n - 1))) / (2 * square);
    return 1 + 2 * t;
  }

  private static double three(double a, double b, double c) {
    double besideBoth = a * b * (a + b) / (a * a + a * b + b * b);
    if (c <= besideBoth) {
      return a + b;
    }
    double curvature = 1 / a + 1 / b + 1 / c - 2 * Math.sqrt((a + b + c) / (a * b * c));
    return -1 / curvature;
  }
}
