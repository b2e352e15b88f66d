package org.loomwright.physics.packing;

import java.util.SplittableRandom;

/**
 * Looks for a tight arrangement: shakes one ({@link Annealing}) and squeezes it, then shakes the
 * outcome less hard and keeps what is tighter; starts anew when that has not helped. Ends after a
 * fixed amount of work, so the result is the same on every machine.
 */
final class PackingSearch {
  /** Tries times circles, about the number of distances looked at: some hundredths of a second. */
  private static final double WORK = 3e6;

  /** Tries per circle in one shaking; fewer where there are too many circles for that. */
  private static final int SWEEPS = 350;

  private static final int FEWEST_SWEEPS = 50;

  private static final int MOST_ROUNDS = 40;

  /** Rounds without success after which to start anew. */
  private static final int PATIENCE = 2;

  /**
   * Fixed. With others too (five tried) the worst published case up to 60 equal circles stayed
   * within 1.02 of its radius, and the worst of up to 50 that all differ came to between 1.018 and
   * 1.021.
   */
  private static final long SEED = 3;

  /** First temperatures of a new start and of a later round, times the number of circles. */
  private static final double HOT = 0.03;

  private static final double WARM = 0.015;

  /**
   * A soft squeeze is quick, a firm one shows the true size. The unit of length is the square root
   * of the sum of squared radii.
   */
  private static final double SOFT = 30;

  private static final double FIRM = 1000;

  private static final int STEPS = 300;
  private static final double FLAT_SOFT = 1e-2;
  private static final double FLAT_FIRM = 1e-4;

  /** Overlaps this small are no longer pressed out, nor any after so many rounds. */
  private static final double FINISHED = 1e-10;

  private static final int FINISHING_ROUNDS = 8;
  private static final int FINISHING_STEPS = 200;

  /** A gain of less than this is rounding. */
  private static final double GAIN = 1e-7;

  private final double[] radii;
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
    int numbers = 2 * radii.length + 1;
    this.radii = radii;
    this.goodEnough = bound + GAIN;
    this.soft = new Squeeze(radii, SOFT);
    this.firm = new Squeeze(radii, FIRM);
    this.descent = new Descent(numbers);
    this.scratch = new double[numbers];
  }

  /** The tightest arrangement found, overlaps pressed out. */
  Layout best() {
    double affordable = WORK / ((double) radii.length * radii.length);
    int sweeps = (int) Math.max(FEWEST_SWEEPS, Math.min(SWEEPS, affordable));
    int rounds = (int) Math.max(1, Math.min(MOST_ROUNDS, affordable / sweeps));
    Layout current = Growth.of(radii, random);
    Layout best = current;
    double reached = Double.POSITIVE_INFINITY;
    double tightest = Double.POSITIVE_INFINITY;
    int inVain = 0;
    for (int round = 0; round < rounds && tightest > goodEnough; round++) {
      if (inVain == PATIENCE) {
        current = start();
        reached = Double.POSITIVE_INFINITY;
        inVain = 0;
      }
      double hot = Double.isInfinite(reached) ? HOT : WARM;
      Layout trial = Annealing.of(current, hot, sweeps, random);
      double radius = squeeze(trial);
      if (radius < reached - GAIN) {
        reached = radius;
        current = trial;
        inVain = 0;
      } else {
        inVain++;
      }
      if (radius < tightest) {
        tightest = radius;
        best = trial;
      }
    }
    return finished(best);
  }

  /** Equal circles always grow the same way, so for them chance alone makes another start. */
  private Layout start() {
    boolean equal = Annealing.areAlike(radii[0], radii[radii.length - 1]);
    return equal || random.nextBoolean() ? scattered() : Growth.of(radii, random);
  }

  private Layout scattered() {
    double[] at = new double[2 * radii.length + 1];
    for (int i = 0; i < radii.length; i++) {
      double distance = Math.sqrt(random.nextDouble());
      double angle = 2 * Math.PI * random.nextDouble();
      at[2 * i] = distance * StrictMath.cos(angle);
      at[2 * i + 1] = distance * StrictMath.sin(angle);
    }
    at[2 * radii.length] = 1;
    return new Layout(radii, at);
  }

  /**
   * Squeezes and gives the outer radius to expect when all overlaps are pressed out. At a minimum F
   * = R + K/2 Σg² lies below the true radius by K/2 Σg² to first order, so it is about F + (F − R).
   */
  private double squeeze(Layout layout) {
    descent.down(soft, layout.at(), STEPS, FLAT_SOFT);
    descent.down(firm, layout.at(), STEPS, FLAT_FIRM);
    return 2 * firm.force(layout.at(), scratch) - layout.outer();
  }

  private Layout finished(Layout layout) {
    double[] at = layout.at().clone();
    double worst = Double.POSITIVE_INFINITY;
    for (int round = 0; round < FINISHING_ROUNDS && worst > FINISHED; round++) {
      descent.down(firm, at, FINISHING_STEPS, 0.1 * FINISHED * FIRM);
      worst = firm.tighten(at);
    }
    return new Layout(radii, at);
  }
}
