package org.loomwright.physics.protection;

import java.util.SortedSet;
import java.util.TreeSet;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * Of two fuses in a row the one nearer the load must open first: latest opening downstream below
 * earliest opening upstream, at every fault current of a range. Beyond the last gate of the
 * upstream fuse no earliest opening is known, so none is claimed there; a maker's own I²t curves
 * may show more.
 */
public final class Selectivity {
  private static final String SOURCE = "ISO 8820 opening-time limits";

  private static final String UPSTREAM = "rating of the upstream fuse";
  private static final String DOWNSTREAM = "rating of the downstream fuse";

  /** Points per factor of ten in current. */
  private static final int PER_DECADE = 400;

  private static final int HALVINGS = 50;

  private Selectivity() {}

  /**
   * @param upstream the fuse nearer the source
   * @param downstream the fuse nearer the load
   * @param upstreamAmbientC air at the upstream fuse, °C; warm it opens earlier
   * @param otherLoadA what the upstream fuse carries beside the fault, A, 0 to 1000
   * @param fromA smallest fault current behind the downstream fuse, A
   * @param toA largest, A, not below the smallest
   */
  public record Pair(
      Fuse upstream,
      Fuse downstream,
      double upstreamAmbientC,
      double otherLoadA,
      double fromA,
      double toA) {
    /** Checks the ranges. */
    public Pair {
      Require.within("other load", otherLoadA, 0, 1000, "A");
      Require.within("smallest fault", fromA, 0.1, 100_000, "A");
      Require.within("largest fault", toA, fromA, 100_000, "A");
    }
  }

  /**
   * @param selectiveUpToA from the smallest fault up to this current the downstream fuse surely
   *     opens first, A; 0 if not even there
   * @param check held against the largest fault
   * @param trace how it was reached
   */
  public record Result(double selectiveUpToA, Check check, Trace trace) {}

  /** Where the order of opening is sure. */
  public static Result of(Pair pair) {
    double upToA = upTo(pair);
    double factor = FuseRerating.factor(pair.upstream().family(), pair.upstreamAmbientC());
    double shownA = upToA == 0 ? pair.fromA() : upToA;
    double upstreamA = (shownA + pair.otherLoadA()) / factor;
    Trace trace =
        Trace.builder()
            .given("smallest fault", pair.fromA(), "A")
            .given("largest fault", pair.toA(), "A")
            .given("other load of the upstream fuse", pair.otherLoadA(), "A")
            .given(UPSTREAM + ", " + pair.upstream().label(), pair.upstream().ratingA(), "A")
            .given(DOWNSTREAM + ", " + pair.downstream().label(), pair.downstream().ratingA(), "A")
            .given("ambient of the upstream fuse", pair.upstreamAmbientC(), "°C")
            .line(
                "re-rating of the upstream fuse",
                FuseRerating.formula("ambient of the upstream fuse", pair.upstreamAmbientC()),
                factor,
                "1",
                FuseRerating.source(pair.upstream().family()))
            .line("selective up to", upToWords(pair, upToA), upToA, "A", SOURCE)
            .line(
                "latest opening downstream at "
                    + (upToA == 0 ? "the smallest fault" : "this current"),
                OpeningWords.longest(
                    pair.downstream(),
                    shownA,
                    upToA == 0 ? "smallest fault" : "selective up to",
                    DOWNSTREAM),
                pair.downstream().longestOpeningS(shownA),
                "s",
                SOURCE)
            .line(
                "multiple of the warm upstream fuse",
                "("
                    + (upToA == 0 ? "smallest fault" : "selective up to")
                    + " + other load of the upstream fuse) / (re-rating of the upstream fuse * "
                    + UPSTREAM
                    + ")",
                upstreamA / pair.upstream().ratingA(),
                "1",
                "a warm fuse opens as one of a smaller rating")
            .line(
                "earliest opening upstream, warm, with its other load",
                OpeningWords.shortest(
                    pair.upstream(), upstreamA, "multiple of the warm upstream fuse"),
                pair.upstream().shortestOpeningS(upstreamA),
                "s",
                SOURCE)
            .build();
    Check check =
        Check.atLeast(
            "selectivity",
            upToA,
            pair.toA(),
            "A",
            "the "
                + pair.downstream().label()
                + " surely opens before the "
                + pair.upstream().label()
                + " up to the largest fault",
            SOURCE);
    return new Result(upToA, check, trace);
  }

  private static String upToWords(Pair pair, double upToA) {
    if (upToA == pair.toA()) {
      return "largest fault";
    }
    return upToA == 0
        ? "none: not even at the smallest fault"
        : "found by halving: latest opening downstream before earliest opening upstream";
  }

  /** Whether the downstream fuse is surely open before the upstream one can open. */
  static boolean selective(Pair pair, double currentA) {
    double factor = FuseRerating.factor(pair.upstream().family(), pair.upstreamAmbientC());
    double upstreamS = pair.upstream().shortestOpeningS((currentA + pair.otherLoadA()) / factor);
    return pair.downstream().longestOpeningS(currentA) < upstreamS;
  }

  /** Walks up in small steps, then narrows the step at which it first fails. */
  private static double upTo(Pair pair) {
    double good = 0;
    for (double currentA : currentsToTry(pair)) {
      if (!selective(pair, currentA)) {
        return good == 0 ? 0 : narrowed(pair, good, currentA);
      }
      good = currentA;
    }
    return good;
  }

  /** Evenly in logs, and just below every step of the downstream fuse, where it is worst. */
  private static SortedSet<Double> currentsToTry(Pair pair) {
    SortedSet<Double> currents = new TreeSet<>();
    double span = pair.toA() / pair.fromA();
    int steps = 1 + (int) Math.ceil(PER_DECADE * Math.log10(span));
    for (int i = 0; i < steps; i++) {
      currents.add(pair.fromA() * Math.pow(span, (double) i / steps));
    }
    for (FuseGate gate : pair.downstream().gates()) {
      currents.add(gate.multiple() * pair.downstream().ratingA() * (1 - 1e-6));
    }
    currents.add(pair.toA());
    return currents.tailSet(pair.fromA()).headSet(Math.nextUp(pair.toA()));
  }

  private static double narrowed(Pair pair, double good, double bad) {
    double low = good;
    double high = bad;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (selective(pair, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
