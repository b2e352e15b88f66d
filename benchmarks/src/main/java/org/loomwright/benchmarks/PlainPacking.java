package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Wires in a small circle, found plainly: scattered, then pushed apart and inward bit by bit with
 * all overlaps weighing ever more; the best of many scatters, each made good by stretching it until
 * nothing overlaps.
 */
final class PlainPacking {
  private static final int STEPS = 4000;
  private static final double FIRST_STIFFNESS = 10;
  private static final double LAST_STIFFNESS = 3000;

  private PlainPacking() {}

  /**
   * Outer radius, mm.
   *
   * @param scatters how many beginnings are tried
   */
  static double radiusMm(List<Double> radiiMm, int scatters) {
    double unitMm = Math.sqrt(radiiMm.stream().mapToDouble(r -> r * r).sum());
    double[] radii = radiiMm.stream().mapToDouble(r -> r / unitMm).toArray();
    Random random = new Random(1);
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k < scatters; k++) {
      best = Math.min(best, once(radii, random));
    }
    return best * unitMm;
  }

  private static double once(double[] radii, Random random) {
    int n = radii.length;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 2 * random.nextDouble() - 1;
      y[i] = 2 * random.nextDouble() - 1;
    }
    for (int step = 0; step < STEPS; step++) {
      double share = (double) step / STEPS;
      push(radii, x, y, FIRST_STIFFNESS * Math.pow(LAST_STIFFNESS / FIRST_STIFFNESS, share));
    }
    return stretched(radii, x, y);
  }

  /** One small step down the slope of Σ distance² · radius² + stiffness · Σ overlap². */
  private static void push(double[] radii, double[] x, double[] y, double stiffness) {
    int n = radii.length;
    double[] byX = new double[n];
    double[] byY = new double[n];
    for (int i = 0; i < n; i++) {
      byX[i] -= 2 * radii[i] * radii[i] * x[i];
      byY[i] -= 2 * radii[i] * radii[i] * y[i];
      for (int j = 0; j < i; j++) {
        double dx = x[i] - x[j];
        double dy = y[i] - y[j];
        double distance = Math.hypot(dx, dy);
        double overlap = radii[i] + radii[j] - distance;
        if (overlap > 0 && distance > 0) {
          double push = 2 * stiffness * overlap / distance;
          byX[i] += push * dx;
          byY[i] += push * dy;
          byX[j] -= push * dx;
          byY[j] -= push * dy;
        }
      }
    }
    double length = 0.1 / stiffness;
    for (int i = 0; i < n; i++) {
      x[i] += length * byX[i];
      y[i] += length * byY[i];
    }
  }

  private static double stretched(double[] radii, double[] x, double[] y) {
    double stretch = 0;
    double far = 0;
    for (int i = 0; i < radii.length; i++) {
      for (int j = 0; j < i; j++) {
        double distance = Math.hypot(x[i] - x[j], y[i] - y[j]);
        stretch = Math.max(stretch, (radii[i] + radii[j]) / distance);
      }
    }
    for (int i = 0; i < radii.length; i++) {
      far = Math.max(far, stretch * Math.hypot(x[i], y[i]) + radii[i]);
    }
    return far;
  }

  /** Wires of a made-up bundle: few thick ones, many thin, no two alike; radii, mm. */
  static List<Double> bundle(int wires) {
    double[] diametersMm = {1.6, 1.9, 2.1, 1.6, 2.4, 1.9, 3.0, 1.6, 3.7, 4.3};
    List<Double> radiiMm = new ArrayList<>();
    for (int i = 0; i < wires; i++) {
      radiiMm.add(diametersMm[i % diametersMm.length] / 2 * (1 + 0.002 * i));
    }
    return radiiMm;
  }
}
