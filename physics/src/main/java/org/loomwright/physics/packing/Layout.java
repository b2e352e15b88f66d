package org.loomwright.physics.packing;

/**
 * Places of circles while they are being moved about: x of circle i at index 2 i, y at 2 i + 1, and
 * the radius of the circle round them at the end.
 *
 * @param radii radii of the circles, never changed
 * @param at places and outer radius, {@code 2 n + 1} numbers
 */
@SuppressWarnings("ArrayRecordComponent") // Working memory of the search, compared by nobody.
record Layout(double[] radii, double[] at) {

  double outer() {
    return at[at.length - 1];
  }

  /**
   * The same arrangement made good: moved apart until no two circles overlap, and the circle round
   * the origin drawn round them. What comes out is always a real packing; the closer the circles
   * were to touching, the less it grows.
   */
  Layout madeGood() {
    int n = radii.length;
    double stretch = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double distance = Math.hypot(at[2 * i] - at[2 * j], at[2 * i + 1] - at[2 * j + 1]);
        stretch = Math.max(stretch, (radii[i] + radii[j]) / distance);
      }
    }
    double[] moved = new double[at.length];
    for (int i = 0; i < n; i++) {
      moved[2 * i] = at[2 * i] * stretch;
      moved[2 * i + 1] = at[2 * i + 1] * stretch;
      double reach = Math.hypot(moved[2 * i], moved[2 * i + 1]) + radii[i];
      moved[2 * n] = Math.max(moved[2 * n], reach);
    }
    return new Layout(radii, moved);
  }
}
