package org.loomwright.physics.packing;

import java.util.SplittableRandom;

/**
 * Looks for a tight arrangement: squeezes a first one, then again and again moves one circle into a
 * gap or swaps two of like size, squeezes, and keeps what is tighter; starts anew when nothing has
 * helped for long. Ends after a fixed amount of work, so the result is the same on every machine.
 */
final class PackingSearch {
  /** Pairs of circles to look at; a few hundredths of a second once the program is warm. */
  private static final long WORK = 19_000_000L;

  /** Pairs of circles to look at while the last overlaps are pressed out. */
  private static final long FINISHING_WORK = 24_000_000L;

  /** The same where sizes are diverse: there are so many more arrangements. */
  private static final long DIVERSE_WORK = 48_000_000L;

  /**
   * Diverse: more different sizes than this, the smallest below this share of the largest. Wires of
   * one bundle are not like that.
   */
  private static final int MANY_SIZES = 12;

  private static final double WIDE_SPREAD = 0.1;

  /**
   * Fixed; with others the radius of 30 or more circles comes out up to 1.5 % larger or smaller.
   */
  private static final long SEED = 17;

  /**
   * A soft squeeze lets circles slip past each other, a firm one shows the true size. The unit of
   * length is the square root of the sum of squared radii.
   */
  private static final double SOFT = 30;

  private static final double FIRM = 1000;

  private static final int FIRST_STEPS = 20;
  private static final int STEPS = 60;
  private static final double FLAT_SOFT = 1e-2;
  private static final double FLAT_FIRM = 1e-4;

  /** A move is given up after the first steps when it is this much wider than what it came from. */
  private static final double HOPELESS = 1.01;

  /** Arrangements grown for one start, and points tried for one gap. */
  private static final int GROWN = 8;

  private static final int POINTS = 30;

  /** The circle to move is the most squeezed of this many drawn ones. */
  private static final int DRAWN = 3;

  /** Partners for a swap are at most this far apart in the order of size. */
  private static final int SWAP_REACH = 3;

  /** Moves without success, per circle, after which to start anew; and most moves in all. */
  private static final int PATIENCE = 4;

  private static final int MOST_MOVES = 400;

  /** Radii that differ by less than this share count as equal: swapping them changes nothing. */
  private static final double SAME = 1e-4;

  private static final double FINISHED = 1e-11;

  private final double[] radii;
  private final int n;
  private final boolean varied;
  private final long most;
  private final double goodEnough;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final Squeeze soft;
  private final Squeeze firm;
  private final Descent descent;
  private final double[] scratch;

  /**
   * @param radii largest first, their squares adding up to 1
   * @param bound a proven lower bound of the outer radius: reaching it ends the search
   */
  PackingSearch(double[] radii, double bound) {
    this.radii = radii;
    this.n = radii.length;
    this.varied = radii[n - 1] < radii[0] * (1 - SAME);
    this.most = isDiverse(radii) ? DIVERSE_WORK : WORK;
    this.goodEnough = bound * (1 + 1e-7);
    this.soft = new Squeeze(radii, SOFT);
    this.firm = new Squeeze(radii, FIRM);
    this.descent = new Descent(2 * n + 1);
    this.scratch = new double[2 * n + 1];
  }

  /**
   * An arrangement and how wide it is when squeezed.
   *
   * @param softR estimate of the radius after the soft squeeze
   * @param firmR estimate after the firm one; endless when it was given up before
   */
  private record Squeezed(Layout layout, double softR, double firmR) {}

  /** The tightest arrangement found, overlaps pressed out. */
  Layout best() {
    Squeezed current = squeeze(Growth.of(radii, random), Double.POSITIVE_INFINITY);
    Squeezed best = current;
    int inVain = 0;
    for (int move = 0;
        move < MOST_MOVES * n && best.firmR() > goodEnough && soft.work() + firm.work() < most;
        move++) {
      if (inVain > PATIENCE * n) {
        current = squeeze(start(), Double.POSITIVE_INFINITY);
        inVain = 0;
      } else {
        Squeezed trial = squeeze(moved(current.layout()), current.softR());
        if (trial.firmR() < current.firmR() - 1e-7) {
          current = trial;
          inVain = 0;
        } else {
          inVain++;
        }
      }
      if (current.firmR() < best.firmR()) {
        best = current;
      }
    }
    return finished(best.layout());
  }

  private static boolean isDiverse(double[] radii) {
    int sizes = 1;
    for (int i = 1; i < radii.length; i++) {
      sizes += radii[i] < radii[i - 1] * (1 - SAME) ? 1 : 0;
    }
    return sizes > MANY_SIZES && radii[radii.length - 1] < WIDE_SPREAD * radii[0];
  }

  private Layout start() {
    if (!varied || random.nextInt(4) == 0) {
      return scattered();
    }
    Layout tightest = Growth.of(radii, random);
    for (int grown = 1; grown < GROWN; grown++) {
      Layout next = Growth.of(radii, random);
      tightest = next.outer() < tightest.outer() ? next : tightest;
    }
    return tightest;
  }

  private Layout scattered() {
    double[] at = new double[2 * n + 1];
    for (int i = 0; i < n; i++) {
      scatter(at, i, 1.1);
    }
    at[2 * n] = 1.2;
    return new Layout(radii, at);
  }

  private void scatter(double[] at, int circle, double within) {
    double distance = within * Math.sqrt(random.nextDouble());
    double angle = 2 * Math.PI * random.nextDouble();
    at[2 * circle] = distance * StrictMath.cos(angle);
    at[2 * circle + 1] = distance * StrictMath.sin(angle);
  }

  private Layout moved(Layout from) {
    Layout trial = from.copy();
    int circle = squeezedOne(from);
    int partner = Math.min(n - 1, circle + 1 + random.nextInt(SWAP_REACH));
    if (random.nextBoolean() && radii[partner] < radii[circle] * (1 - SAME)) {
      swap(trial.at(), 2 * circle, 2 * partner);
      swap(trial.at(), 2 * circle + 1, 2 * partner + 1);
    } else {
      intoGap(trial.at(), circle, from.outer());
    }
    return trial;
  }

  private static void swap(double[] numbers, int i, int j) {
    double kept = numbers[i];
    numbers[i] = numbers[j];
    numbers[j] = kept;
  }

  private int squeezedOne(Layout layout) {
    int most = random.nextInt(n);
    for (int drawn = 1; drawn < DRAWN; drawn++) {
      int other = random.nextInt(n);
      most = layout.strain(other) > layout.strain(most) ? other : most;
    }
    return most;
  }

  /** Puts a circle at the roomiest of some random points. */
  private void intoGap(double[] at, int circle, double outer) {
    double roomiest = Double.NEGATIVE_INFINITY;
    double x = 0;
    double y = 0;
    for (int point = 0; point < POINTS; point++) {
      scatter(at, circle, outer);
      double room = room(at, circle, outer);
      if (room > roomiest) {
        roomiest = room;
        x = at[2 * circle];
        y = at[2 * circle + 1];
      }
    }
    at[2 * circle] = x;
    at[2 * circle + 1] = y;
  }

  private double room(double[] at, int circle, double outer) {
    double x = at[2 * circle];
    double y = at[2 * circle + 1];
    double room = outer - Math.hypot(x, y);
    for (int j = 0; j < n; j++) {
      if (j != circle) {
        double dx = x - at[2 * j];
        double dy = y - at[2 * j + 1];
        room = Math.min(room, Math.sqrt(dx * dx + dy * dy) - radii[j]);
      }
    }
    return room;
  }

  /** Squeezes, but gives up as soon as the outcome can hardly be tighter than {@code softR}. */
  private Squeezed squeeze(Layout layout, double softR) {
    descent.down(soft, layout.at(), FIRST_STEPS, FLAT_SOFT);
    double reached = estimate(soft, layout);
    if (reached <= softR * HOPELESS) {
      descent.down(soft, layout.at(), STEPS, FLAT_SOFT);
      reached = estimate(soft, layout);
      if (reached <= softR) {
        descent.down(firm, layout.at(), STEPS, FLAT_FIRM);
        return new Squeezed(layout, reached, estimate(firm, layout));
      }
    }
    return new Squeezed(layout, reached, Double.POSITIVE_INFINITY);
  }

  /**
   * Outer radius to expect when all overlaps are pressed out. At a minimum F = R + K/2 Σg² lies
   * below the true radius by K/2 Σg² to first order, so it is about F + (F − R).
   */
  private double estimate(Squeeze squeeze, Layout layout) {
    return 2 * squeeze.force(layout.at(), scratch) - layout.outer();
  }

  private Layout finished(Layout layout) {
    double[] at = layout.at().clone();
    long start = firm.work();
    do {
      descent.down(firm, at, 10 * STEPS, 0.1 * FINISHED * FIRM);
    } while (firm.tighten(at) > FINISHED && firm.work() - start < FINISHING_WORK);
    return new Layout(radii, at);
  }
}
