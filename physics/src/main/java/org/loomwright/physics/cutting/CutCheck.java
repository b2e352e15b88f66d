package org.loomwright.physics.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Looks at cuts afresh, knowing nothing of how they were found. */
public final class CutCheck {
  private CutCheck() {}

  /** What is wrong with the cuts, one sentence each; empty when they hold. */
  public static List<String> problems(CuttingStock.Input in, CuttingStock.Result result) {
    List<String> problems = new ArrayList<>();
    TreeMap<BigDecimal, Integer> open = new TreeMap<>();
    in.pieces().forEach(piece -> open.merge(exact(piece.lengthMm()), piece.count(), Integer::sum));
    int spools = 0;
    for (Pattern pattern : result.patterns()) {
      spools += pattern.times();
      BigDecimal used = exact(in.kerfMm()).negate();
      for (Piece piece : pattern.pieces()) {
        BigDecimal each = exact(piece.lengthMm()).add(exact(in.kerfMm()));
        used = used.add(each.multiply(BigDecimal.valueOf(piece.count())));
        open.merge(exact(piece.lengthMm()), -piece.count() * pattern.times(), Integer::sum);
      }
      if (used.compareTo(exact(in.stockMm())) > 0) {
        problems.add(
            "a spool would have to be " + used.stripTrailingZeros().toPlainString() + " mm long");
      }
    }
    open.forEach(
        (length, left) -> {
          if (left != 0) {
            problems.add(
                "of the pieces of "
                    + length.toPlainString()
                    + " mm "
                    + Math.abs(left)
                    + (left > 0 ? " are missing" : " are too many"));
          }
        });
    if (spools != result.stockUsed()) {
      problems.add("the patterns use " + spools + " spools, not " + result.stockUsed());
    }
    if (result.lowerBound() > result.stockUsed()) {
      problems.add("the lower bound lies above the spools used");
    }
    return problems;
  }

  private static BigDecimal exact(double mm) {
    return BigDecimal.valueOf(mm).stripTrailingZeros();
  }
}
