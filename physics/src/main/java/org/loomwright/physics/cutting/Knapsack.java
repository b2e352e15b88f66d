package org.loomwright.physics.cutting;

import java.util.Arrays;

/**
 * The pattern of greatest worth that fits on one spool and gives no piece more often than wanted:
 * the bounded knapsack by dynamic programming over the length used (Gilmore and Gomory 1961).
 */
final class Knapsack {
  /** Most cells of the table; larger tasks are not priced. */
  private static final long MOST_CELLS = 10_000_000;

  private final Sizes sizes;

  Knapsack(Sizes sizes) {
    this.sizes = sizes;
  }

  /** Whether the table for this task is small enough. */
  static boolean canHold(Sizes sizes) {
    return cells(sizes) <= MOST_CELLS;
  }

  /** Cells of the table for the whole demand: the measure of work of one pattern. */
  static long cells(Sizes sizes) {
    long lots = 0;
    for (int wanted : sizes.demand()) {
      lots += 32 - Integer.numberOfLeadingZeros(wanted);
    }
    return lots * (sizes.stock() + 1L);
  }

  /**
   * The best pattern.
   *
   * @param worth of one piece by kind; pieces worth nothing are left out
   * @param most most pieces by kind
   */
  int[] best(double[] worth, int[] most) {
    int kinds = sizes.kinds();
    int stock = sizes.stock();
    double[] best = new double[stock + 1];
    int[] kindOf = new int[32 * kinds];
    int[] sizeOf = new int[32 * kinds];
    boolean[][] taken = new boolean[32 * kinds][];
    int lots = 0;
    for (int kind = 0; kind < kinds; kind++) {
      int left = worth[kind] > 0 ? Math.min(most[kind], stock / sizes.length()[kind]) : 0;
      // Lots of 1, 2, 4 … and a rest make up every count.
      for (int lot = 1; left > 0; left -= lot, lot *= 2) {
        lot = Math.min(lot, left);
        kindOf[lots] = kind;
        sizeOf[lots] = lot;
        taken[lots++] = take(best, lot * sizes.length()[kind], lot * worth[kind]);
      }
    }
    int[] pattern = new int[kinds];
    int room = stock;
    for (int lot = lots - 1; lot >= 0; lot--) {
      if (taken[lot][room]) {
        pattern[kindOf[lot]] += sizeOf[lot];
        room -= sizeOf[lot] * sizes.length()[kindOf[lot]];
      }
    }
    return pattern;
  }

  private static boolean[] take(double[] best, int length, double worth) {
    boolean[] taken = new boolean[best.length];
    for (int room = best.length - 1; room >= length; room--) {
      double with = best[room - length] + worth;
      if (with > best[room]) {
        best[room] = with;
        taken[room] = true;
      }
    }
    return taken;
  }

  static double worthOf(int[] pattern, double[] worth) {
    double sum = 0;
    for (int kind = 0; kind < pattern.length; kind++) {
      sum += pattern[kind] * Math.max(0, worth[kind]);
    }
    return sum;
  }

  static boolean isEmpty(int[] demand) {
    return Arrays.stream(demand).allMatch(left -> left == 0);
  }
}
