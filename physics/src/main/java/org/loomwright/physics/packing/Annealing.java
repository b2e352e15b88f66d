package org.loomwright.physics.packing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Shakes an arrangement, hard at first, then ever less (simulated annealing: Kirkpatrick, Gelatt
 * and Vecchi 1983). A try moves one circle a little, or anywhere, or swaps two of like size; what
 * lowers F of {@link Squeeze} is kept, what raises it by E with probability exp(−E / T), T being
 * the temperature (Metropolis and others 1953). The outer radius follows once a sweep.
 *
 * <p>Swaps of like circles are what lets a dense heap of unlike circles still rearrange. All
 * lengths are in units of the square root of the sum of squared radii.
 */
final class Annealing {
  /** So soft that circles slip past each other and the right neighbours find together. */
  private static final double STIFFNESS = 2;

  /** Temperature at the end, times the number of circles: the heap has long set. */
  private static final double COLD = 0.003;

  /** Share of tries that swap, where sizes differ. */
  private static final double SWAPS = 0.3;

  /** Share of tries that move a circle anywhere. */
  private static final double LEAPS = 0.1;

  /** Radii that differ by less than this share count as equal. */
  private static final double SAME = 1e-4;

  /** No limit to a sum. */
  private static final double ALL = Double.POSITIVE_INFINITY;

  /** Small moves adapt so that about this share of them is kept. */
  private static final double KEPT = 0.4;

  /** What a step grows or shrinks by after each sweep, as a share. */
  private static final double ADAPT = 0.05;

  /** Largest and first small move, times the root of the number of circles. */
  private static final double LARGEST_STEP = 0.5;

  private static final double FIRST_STEP = 0.3;

  /** −ln u for evenly spread u: what a try may cost, in temperatures. */
  private static final double[] ALLOWANCE = allowances(1024);

  private final double[] radii;
  private final int n;

  /** For each circle the first one that is clearly smaller, or n. */
  private final int[] smaller;

  private final double swapShare;
  private final double[] x;
  private final double[] y;
  private final SplittableRandom random;
  private double outer;
  private double temperature;
  private double step;

  private Annealing(Layout from, SplittableRandom random) {
    this.radii = from.radii();
    this.n = radii.length;
    this.smaller = new int[n];
    for (int i = n - 1; i >= 0; i--) {
      boolean alike = i < n - 1 && areAlike(radii[i], radii[i + 1]);
      smaller[i] = alike ? smaller[i + 1] : i + 1;
    }
    this.swapShare = smaller[0] < n ? SWAPS : 0;
    this.x = new double[n];
    this.y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = from.at()[2 * i];
      y[i] = from.at()[2 * i + 1];
    }
    this.outer = from.outer();
    this.random = random;
  }

  /** Whether swapping the two would change nothing; the larger comes first. */
  static boolean areAlike(double larger, double smaller) {
    return smaller > larger * (1 - SAME);
  }

  private static double[] allowances(int size) {
    double[] allowances = new double[size];
    for (int k = 0; k < size; k++) {
      allowances[k] = -StrictMath.log((k + 0.5) / size);
    }
    return allowances;
  }

  /**
   * Another arrangement of the same circles, still soft: overlapping where they touch.
   *
   * @param hot first temperature, times the number of circles
   * @param sweeps tries per circle
   */
  static Layout of(Layout from, double hot, int sweeps, SplittableRandom random) {
    Annealing annealing = new Annealing(from, random);
    annealing.run(hot, sweeps);
    return annealing.layout();
  }

  private void run(double hot, int sweeps) {
    temperature = hot / n;
    double cooling = StrictMath.pow(COLD / hot, 1.0 / sweeps);
    step = FIRST_STEP / Math.sqrt(n);
    fitOuter();
    for (int sweep = 0; sweep < sweeps; sweep++) {
      sweep();
      temperature *= cooling;
      fitOuter();
    }
  }

  private void sweep() {
    int small = 0;
    int kept = 0;
    for (int k = 0; k < n; k++) {
      int circle = random.nextInt(n);
      double kind = random.nextDouble();
      if (kind < swapShare) {
        swap(circle);
      } else if (kind < swapShare + LEAPS) {
        move(circle, outer * spread(), outer * spread());
      } else {
        small++;
        kept += move(circle, x[circle] + step * spread(), y[circle] + step * spread()) ? 1 : 0;
      }
    }
    step *= kept > KEPT * small ? 1 + ADAPT : 1 - ADAPT;
    step = Math.min(step, LARGEST_STEP / Math.sqrt(n));
  }

  /** Evenly between −1 and 1. */
  private double spread() {
    return 2 * random.nextDouble() - 1;
  }

  private boolean move(int circle, double toX, double toY) {
    double limit = squares(circle, x[circle], y[circle], circle, ALL) + allowance();
    if (squares(circle, toX, toY, circle, limit) > limit) {
      return false;
    }
    x[circle] = toX;
    y[circle] = toY;
    return true;
  }

  /** Swaps a circle with one of the next two smaller sizes. */
  private void swap(int a) {
    int from = smaller[a];
    if (from == n) {
      return;
    }
    int to = smaller[from] == n ? n : smaller[smaller[from]];
    int b = from + random.nextInt(to - from);
    double limit = squares(a, x[a], y[a], b, ALL) + squares(b, x[b], y[b], a, ALL) + allowance();
    double swapped = squares(a, x[b], y[b], b, limit);
    if (swapped <= limit && swapped + squares(b, x[a], y[a], a, limit) <= limit) {
      double keptX = x[a];
      double keptY = y[a];
      x[a] = x[b];
      y[a] = y[b];
      x[b] = keptX;
      y[b] = keptY;
    }
  }

  /** What the sum of squares may rise by: F holds half the stiffness times that sum. */
  private double allowance() {
    return 2 / STIFFNESS * temperature * ALLOWANCE[random.nextInt(ALLOWANCE.length)];
  }

  /**
   * Sum of the squared overlaps of a circle at a place, with the outer circle and with all others
   * but one; once above {@code limit} it is not summed further.
   */
  private double squares(int circle, double atX, double atY, int but, double limit) {
    double radius = radii[circle];
    double outside = Math.max(0, Math.sqrt(atX * atX + atY * atY) + radius - outer);
    double sum = outside * outside;
    for (int j = 0; j < n && sum <= limit; j++) {
      double dx = atX - x[j];
      double dy = atY - y[j];
      double reach = radius + radii[j];
      double square = dx * dx + dy * dy;
      if (square < reach * reach && j != circle && j != but) {
        double overlap = reach - Math.sqrt(square);
        sum += overlap * overlap;
      }
    }
    return sum;
  }

  /** Moves the outer radius to where F is least for the circles as they lie. */
  private void fitOuter() {
    double[] ends = new double[n];
    for (int i = 0; i < n; i++) {
      ends[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]) + radii[i];
    }
    Arrays.sort(ends);
    // With the k farthest outside, K Σ (end − R) = 1 gives R; it must reach beyond the next one.
    double sum = 0;
    for (int k = 1; k <= n; k++) {
      sum += ends[n - k];
      outer = (sum - 1 / STIFFNESS) / k;
      if (k == n || outer >= ends[n - k - 1]) {
        return;
      }
    }
  }

  private Layout layout() {
    double[] at = new double[2 * n + 1];
    for (int i = 0; i < n; i++) {
      at[2 * i] = x[i];
      at[2 * i + 1] = y[i];
    }
    at[2 * n] = outer;
    return new Layout(radii, at);
  }
}
