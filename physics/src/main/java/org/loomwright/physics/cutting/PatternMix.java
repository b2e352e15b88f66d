package org.loomwright.physics.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The least number of spools if patterns could be cut in fractions: a linear programme over
 * patterns, found by the simplex method with one new pattern at a time (Gilmore and Gomory 1961).
 *
 * @param patterns patterns in use
 * @param times how often each, fractions allowed
 * @param bound spools needed at least; holds even where the method stopped early (Farley 1990)
 */
@SuppressWarnings("ArrayRecordComponent") // Handed on within the package, compared by nobody.
record PatternMix(List<int[]> patterns, double[] times, double bound) {
  private static final int MOST_PATTERNS = 3000;
  private static final double ROUNDING = 1e-9;

  /** Whole spools needed at least. */
  int wholeBound() {
    return (int) Math.ceil(bound - 1e-6);
  }

  static PatternMix of(Sizes sizes, int[] demand) {
    return new Simplex(sizes, demand).solve();
  }

  /** Basis, its inverse, and the amounts of the patterns in it; one row per length. */
  private static final class Simplex {
    private final Sizes sizes;
    private final int[] demand;
    private final int rows;
    private final List<int[]> basis = new ArrayList<>();
    private final double[][] inverse;
    private final double[] amount;
    private double bound;

    Simplex(Sizes sizes, int[] demand) {
      this.sizes = sizes;
      this.demand = demand;
      this.rows = sizes.kinds();
      this.inverse = new double[rows][rows];
      this.amount = new double[rows];
      for (int row = 0; row < rows; row++) {
        int[] single = new int[rows];
        single[row] = Math.max(1, Math.min(sizes.stock() / sizes.length()[row], demand[row]));
        basis.add(single);
        inverse[row][row] = 1.0 / single[row];
        amount[row] = (double) demand[row] / single[row];
      }
    }

    PatternMix solve() {
      Knapsack knapsack = new Knapsack(sizes);
      for (int step = 0; step < MOST_PATTERNS; step++) {
        double[] worth = worth();
        int[] entering = knapsack.best(worth, demand);
        double value = Knapsack.worthOf(entering, worth);
        bound = Math.max(bound, wanted(worth) / Math.max(1, value));
        if (value <= 1 + ROUNDING || !enter(entering)) {
          break;
        }
      }
      return new PatternMix(List.copyOf(basis), amount, bound);
    }

    /** What one more piece of each length would cost, in spools. */
    private double[] worth() {
      double[] worth = new double[rows];
      for (double[] row : inverse) {
        for (int column = 0; column < rows; column++) {
          worth[column] += row[column];
        }
      }
      return worth;
    }

    /** Worth of the whole demand; a negative worth is no worth, which keeps the bound true. */
    private double wanted(double[] worth) {
      return Knapsack.worthOf(demand, worth);
    }

    private boolean enter(int[] pattern) {
      double[] change = new double[rows];
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < rows; column++) {
          change[row] += inverse[row][column] * pattern[column];
        }
      }
      int leaving = -1;
      for (int row = 0; row < rows; row++) {
        if (change[row] > ROUNDING
            && (leaving < 0 || amount[row] * change[leaving] < amount[leaving] * change[row])) {
          leaving = row;
        }
      }
      if (leaving < 0) {
        return false;
      }
      pivot(leaving, change);
      basis.set(leaving, pattern);
      return true;
    }

    private void pivot(int leaving, double[] change) {
      double[] pivotRow = inverse[leaving];
      for (int column = 0; column < rows; column++) {
        pivotRow[column] /= change[leaving];
      }
      amount[leaving] /= change[leaving];
      for (int row = 0; row < rows; row++) {
        if (row != leaving && change[row] != 0) {
          for (int column = 0; column < rows; column++) {
            inverse[row][column] -= change[row] * pivotRow[column];
          }
          amount[row] = Math.max(0, amount[row] - change[row] * amount[leaving]);
        }
      }
    }
  }
}
