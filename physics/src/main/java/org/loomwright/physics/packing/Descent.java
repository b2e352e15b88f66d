package org.loomwright.physics.packing;

/**
 * Walks down to a minimum of {@link Squeeze#force} by the limited-memory BFGS method (Nocedal 1980)
 * with halving of steps that do not go down enough.
 */
final class Descent {
  private static final int MEMORY = 5;
  private static final int HALVINGS = 30;

  /** Share of the expected decrease that a step must reach (Armijo 1966). */
  private static final double ENOUGH = 1e-4;

  private final double[][] steps = new double[MEMORY][];
  private final double[][] bends = new double[MEMORY][];
  private final double[] curvature = new double[MEMORY];
  private final double[] weight = new double[MEMORY];
  private final double[] way;
  private double[] slope;
  private double[] nextSlope;
  private double[] next;

  Descent(int numbers) {
    for (int i = 0; i < MEMORY; i++) {
      steps[i] = new double[numbers];
      bends[i] = new double[numbers];
    }
    way = new double[numbers];
    slope = new double[numbers];
    nextSlope = new double[numbers];
    next = new double[numbers];
  }

  /**
   * Moves {@code at} downhill.
   *
   * @param most most steps
   * @param flat slope at which to stop
   */
  void down(Squeeze squeeze, double[] at, int most, double flat) {
    int kept = 0;
    double height = squeeze.force(at, slope);
    for (int step = 0; step < most && dot(slope, slope) > flat * flat; step++) {
      direction(step, kept);
      double fall = dot(way, slope);
      if (fall >= 0) {
        // Rounding has spoilt the memory: start afresh straight downhill.
        kept = 0;
        direction(step, 0);
        fall = dot(way, slope);
      }
      double length = kept == 0 ? Math.min(1, 0.05 / Math.sqrt(-fall)) : 1;
      double lower = Double.POSITIVE_INFINITY;
      int halvings = 0;
      while (true) {
        for (int k = 0; k < at.length; k++) {
          next[k] = at[k] + length * way[k];
        }
        lower = squeeze.force(next, nextSlope);
        if (lower <= height + ENOUGH * length * fall) {
          break;
        }
        if (++halvings > HALVINGS) {
          return;
        }
        length /= 2;
      }
      kept = remember(step, kept, at);
      System.arraycopy(next, 0, at, 0, at.length);
      double[] swap = slope;
      slope = nextSlope;
      nextSlope = swap;
      height = lower;
    }
  }

  private int remember(int step, int kept, double[] at) {
    int slot = step % MEMORY;
    double[] s = steps[slot];
    double[] b = bends[slot];
    for (int k = 0; k < at.length; k++) {
      s[k] = next[k] - at[k];
      b[k] = nextSlope[k] - slope[k];
    }
    curvature[slot] = dot(s, b);
    // A step along which the slope does not rise says nothing about the bend of the ground.
    return curvature[slot] > 1e-14 * dot(b, b) ? Math.min(MEMORY, kept + 1) : 0;
  }

  /** The two-loop recursion: minus slope, corrected by the bends seen in the last steps. */
  private void direction(int step, int kept) {
    for (int k = 0; k < way.length; k++) {
      way[k] = -slope[k];
    }
    for (int back = 1; back <= kept; back++) {
      int slot = Math.floorMod(step - back, MEMORY);
      weight[slot] = dot(steps[slot], way) / curvature[slot];
      add(way, -weight[slot], bends[slot]);
    }
    if (kept > 0) {
      int slot = Math.floorMod(step - 1, MEMORY);
      double scale = curvature[slot] / dot(bends[slot], bends[slot]);
      for (int k = 0; k < way.length; k++) {
        way[k] *= scale;
      }
    }
    for (int back = kept; back >= 1; back--) {
      int slot = Math.floorMod(step - back, MEMORY);
      double again = dot(bends[slot], way) / curvature[slot];
      add(way, weight[slot] - again, steps[slot]);
    }
  }

  private static void add(double[] to, double factor, double[] what) {
    for (int k = 0; k < to.length; k++) {
      to[k] += factor * what[k];
    }
  }

  private static double dot(double[] a, double[] b) {
    // Four sums side by side: additions that need not wait for each other.
    double first = 0;
    double second = 0;
    double third = 0;
    double fourth = 0;
    int k = 0;
    for (; k < a.length - 3; k += 4) {
      first += a[k] * b[k];
      second += a[k + 1] * b[k + 1];
      third += a[k + 2] * b[k + 2];
      fourth += a[k + 3] * b[k + 3];
    }
    for (; k < a.length; k++) {
      first += a[k] * b[k];
    }
    return (first + second) + (third + fourth);
  }
}
