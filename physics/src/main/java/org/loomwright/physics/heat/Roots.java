package org.loomwright.physics.heat;

import java.util.function.DoubleUnaryOperator;

/** Root of a rising function on an interval: regula falsi with the Illinois rule, then halving. */
final class Roots {
  private static final int FAST_STEPS = 30;
  private static final int HALVINGS = 80;

  private Roots() {}

  /**
   * Where a rising function crosses zero; the end of the interval nearer to it where it does not.
   *
   * @param f rising, continuous on the interval
   * @param low left end
   * @param high right end
   * @param within the answer lies this close to the root, or as close as numbers allow
   */
  static double rising(DoubleUnaryOperator f, double low, double high, double within) {
    double a = low;
    double b = high;
    double fa = f.applyAsDouble(a);
    double fb = f.applyAsDouble(b);
    if (fa >= 0) {
      return a;
    }
    if (fb <= 0) {
      return b;
    }
    int lastSide = 0;
    for (int i = 0; i < FAST_STEPS && b - a > within; i++) {
      double x = (a * fb - b * fa) / (fb - fa);
      if (!(x > a && x < b)) {
        break;
      }
      double fx = f.applyAsDouble(x);
      if (fx == 0) {
        return x;
      }
      // The weight of an end that stays twice running is halved, so that both ends close in.
      if (fx < 0) {
        a = x;
        fa = fx;
        fb = lastSide < 0 ? fb / 2 : fb;
        lastSide = -1;
      } else {
        b = x;
        fb = fx;
        fa = lastSide > 0 ? fa / 2 : fa;
        lastSide = 1;
      }
    }
    for (int i = 0; i < HALVINGS && b - a > within; i++) {
      double x = (a + b) / 2;
      if (f.applyAsDouble(x) < 0) {
        a = x;
      } else {
        b = x;
      }
    }
    return (a + b) / 2;
  }
}
