package org.loomwright.physics.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.physics.Trace;

/**
 * Cuts pieces from as few spools or bars of one length as possible.
 *
 * <p>First fit, then the fractional optimum over patterns as the bound, whole patterns near it, and
 * where a gap is left, every way, up to a fixed amount of work. The result says whether it is
 * proven to be the least; it is the same on every machine.
 */
public final class CuttingStock {
  private CuttingStock() {}

  /**
   * Lengths count in whole tenths of a mm.
   *
   * @param stockMm length of one spool or bar, mm, above zero to 10 km
   * @param pieces what is to be cut, none longer than the stock, up to 10,000 pieces in all
   * @param kerfMm length lost in each cut between two pieces, mm, zero or more; the last piece may
   *     end where the stock ends, without a cut
   */
  public record Input(double stockMm, List<Piece> pieces, double kerfMm) {
    /** Copies the pieces. */
    public Input {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * @param stockUsed spools or bars cut
   * @param lowerBound no way of cutting needs fewer; equal to {@code stockUsed} where that is
   *     proven to be the least
   * @param wastePercent share of the stock used that ends in no piece, cuts included, percent
   * @param patterns how the spools are cut, the most frequent first
   * @param trace how it was reached
   */
  public record Result(
      int stockUsed, int lowerBound, double wastePercent, List<Pattern> patterns, Trace trace) {
    /** Copies the patterns. */
    public Result {
      patterns = List.copyOf(patterns);
    }

    /** Whether no way of cutting needs fewer. */
    public boolean isProvenLeast() {
      return stockUsed == lowerBound;
    }
  }

  /** Finds the cuts. */
  public static Result of(Input in) {
    Sizes sizes = Sizes.of(in);
    Cuts cuts = Cuts.firstFit(sizes, sizes.demand());
    int firstFit = cuts.count();
    int byLength = sizes.byLength(sizes.demand());
    int bound = byLength;
    if (cuts.count() > bound && Knapsack.canHold(sizes)) {
      PatternMix mix = PatternMix.of(sizes, sizes.demand());
      bound = Math.max(bound, mix.wholeBound());
      cuts = Dive.from(sizes, mix, cuts, bound);
    }
    if (cuts.count() > bound) {
      Completion.Outcome outcome = Completion.of(sizes, cuts, bound);
      cuts = outcome.cuts();
      bound = outcome.complete() ? cuts.count() : bound;
    }
    double wantedMm = in.pieces().stream().mapToDouble(p -> p.lengthMm() * p.count()).sum();
    double wastePercent = 100 * (1 - wantedMm / (cuts.count() * in.stockMm()));
    Trace trace =
        Trace.builder()
            .given("length of the stock", in.stockMm(), "mm")
            .given("lost in each cut", in.kerfMm(), "mm")
            .line("all pieces together", "sum of length * count", wantedMm, "mm", "definition")
            .line("least by length alone", "all with cuts / stock, rounded up", byLength, "1", "")
            .line("first try", "longest first, first fit", firstFit, "1", "Johnson 1973")
            .line(
                "no way needs fewer than",
                "fractional patterns rounded up, or every way tried",
                bound,
                "1",
                "Gilmore and Gomory 1961")
            .line("stock used", "whole patterns", cuts.count(), "1", "own search")
            .line(
                "waste",
                "100 * (1 - pieces / (used * stock))",
                wastePercent,
                "%",
                "definition; cuts count as waste")
            .build();
    return new Result(cuts.count(), bound, wastePercent, patterns(in, sizes, cuts), trace);
  }

  /** Spools cut alike are told once. */
  private static List<Pattern> patterns(Input in, Sizes sizes, Cuts cuts) {
    Map<List<Piece>, Integer> times = new LinkedHashMap<>();
    for (int[] spool : cuts.spools()) {
      List<Piece> pieces = new ArrayList<>();
      for (int kind = 0; kind < sizes.kinds(); kind++) {
        if (spool[kind] > 0) {
          pieces.add(new Piece(sizes.lengthMm()[kind], spool[kind]));
        }
      }
      times.merge(List.copyOf(pieces), 1, Integer::sum);
    }
    return times.entrySet().stream()
        .map(e -> new Pattern(e.getValue(), e.getKey(), restMm(in, e.getKey())))
        .sorted(Comparator.comparingInt((Pattern pattern) -> -pattern.times()))
        .toList();
  }

  private static double restMm(Input in, List<Piece> pieces) {
    double usedMm = 0;
    for (Piece piece : pieces) {
      usedMm += piece.count() * (piece.lengthMm() + in.kerfMm());
    }
    // The cut after the last piece falls away where the stock ends within it.
    return Math.max(0, Math.rint(10 * (in.stockMm() - usedMm)) / 10);
  }
}
