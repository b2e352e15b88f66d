package org.loomwright.physics.cutting;

import java.math.BigInteger;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;

/**
 * The same task in whole numbers: each piece longer by one cut, the stock too, since k pieces need
 * k − 1 cuts between them and the last may end where the stock ends. All divided by what divides
 * them all.
 *
 * @param stock length of the stock and one cut, in steps
 * @param length lengths of the pieces, each with a cut, in steps, longest first, all different
 * @param demand how many of each
 * @param lengthMm lengths of the pieces themselves, mm, in the same order
 */
@SuppressWarnings("ArrayRecordComponent") // Handed on within the package, compared by nobody.
record Sizes(int stock, int[] length, int[] demand, double[] lengthMm) {
  private static final double STEPS_PER_MM = 10;
  private static final double LONGEST_MM = 10_000_000;
  private static final int MOST_PIECES = 10_000;

  static Sizes of(CuttingStock.Input in) {
    int stock = steps("stock", in.stockMm());
    int kerf = in.kerfMm() == 0 ? 0 : steps("kerf", in.kerfMm());
    if (in.pieces().isEmpty()) {
      throw new SumException("there must be at least one piece to cut");
    }
    TreeMap<Integer, Integer> demand = new TreeMap<>();
    int total = 0;
    for (Piece piece : in.pieces()) {
      int length = steps("length of a piece", piece.lengthMm());
      Require.within("count of a piece", piece.count(), 1, MOST_PIECES, "pieces");
      if (length > stock) {
        throw new SumException(
            "a piece of "
                + Require.text(piece.lengthMm())
                + " mm can't be cut from a stock of "
                + Require.text(in.stockMm())
                + " mm; a piece must not be longer than the stock");
      }
      demand.merge(length, piece.count(), Integer::sum);
      total += piece.count();
      Require.within("number of all pieces", total, 1, MOST_PIECES, "pieces");
    }
    return reduced(stock + kerf, kerf, demand);
  }

  private static int steps(String what, double mm) {
    Require.positive(what, mm, "mm");
    Require.within(what, mm, 0, LONGEST_MM, "mm");
    double steps = Math.rint(mm * STEPS_PER_MM);
    if (Math.abs(steps - mm * STEPS_PER_MM) > 1e-6) {
      throw new SumException(
          what + " must be in whole tenths of a mm, but is " + Require.text(mm) + " mm");
    }
    return (int) steps;
  }

  private static Sizes reduced(int stock, int kerf, TreeMap<Integer, Integer> demand) {
    BigInteger divisor = BigInteger.ZERO;
    for (int length : demand.keySet()) {
      divisor = divisor.gcd(BigInteger.valueOf((long) length + kerf));
    }
    int step = divisor.intValueExact();
    int[] lengths = new int[demand.size()];
    int[] counts = new int[demand.size()];
    double[] lengthsMm = new double[demand.size()];
    int i = 0;
    for (Map.Entry<Integer, Integer> entry : demand.descendingMap().entrySet()) {
      lengthsMm[i] = entry.getKey() / STEPS_PER_MM;
      lengths[i] = (entry.getKey() + kerf) / step;
      counts[i++] = entry.getValue();
    }
    // What the stock has beyond a multiple of the step can never be used.
    return new Sizes(stock / step, lengths, counts, lengthsMm);
  }

  int kinds() {
    return length.length;
  }

  /** Length of all pieces of a demand. */
  long total(int[] wanted) {
    long total = 0;
    for (int i = 0; i < length.length; i++) {
      total += (long) length[i] * wanted[i];
    }
    return total;
  }

  /** Spools that a demand needs at least, by length alone. */
  int byLength(int[] wanted) {
    return (int) ((total(wanted) + stock - 1) / stock);
  }
}
