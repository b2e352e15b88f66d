package org.loomwright.physics.joining;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * Copper in a splice: all of it must be within the sleeve's range, and no side may be so thin
 * beside the other that the crimp, made for the whole, leaves it loose.
 *
 * <p>Source of the rule on the sum: crimp practice (sum of conductor areas within the sleeve's
 * stated range), from memory. The least share of a side is the shop's own.
 */
public final class SpliceCopper {
  private SpliceCopper() {}

  /**
   * A conductor in the splice.
   *
   * @param name what it is
   * @param areaMm2 its area, mm², above zero
   */
  public record Strand(String name, double areaMm2) {
    /** Refuses a conductor without copper. */
    public Strand {
      Require.positive("conductor area of " + name, areaMm2, "mm²");
    }
  }

  /**
   * @param oneSideMm2 copper on one side, mm²
   * @param otherSideMm2 copper on the other side, mm²
   * @param totalMm2 copper of both sides, mm²
   * @param thinnerShare share of the thinner side in it, 0 to 0.5
   * @param trace how they came about
   */
  public record Result(
      double oneSideMm2, double otherSideMm2, double totalMm2, double thinnerShare, Trace trace) {}

  /** Adds up the copper of both sides; a side without conductors has none. */
  public static Result of(List<Strand> one, List<Strand> other) {
    Trace.Builder trace = Trace.builder();
    double oneMm2 = side("one side", one, trace);
    double otherMm2 = side("the other side", other, trace);
    double totalMm2 = exact(oneMm2 + otherMm2);
    trace.line(
        "copper of both sides", "one side in all + the other side in all", totalMm2, "mm²", "");
    double share = totalMm2 == 0 ? 0 : Math.min(oneMm2, otherMm2) / totalMm2;
    trace.line(
        "share of the thinner side",
        (oneMm2 <= otherMm2 ? "one side" : "the other side") + " in all / copper of both sides",
        share,
        "1",
        "");
    return new Result(oneMm2, otherMm2, totalMm2, share, trace.build());
  }

  /**
   * Both checks: copper within the sleeve's range, and share of the thinner side.
   *
   * @param leastMm2 least copper the sleeve takes, mm², above zero
   * @param mostMm2 most copper the sleeve takes, mm²
   * @param sleeve where the range comes from
   * @param leastShare least share of the thinner side, 0 to 0.5
   * @param balance where that share comes from
   */
  public static List<Check> checks(
      Result copper,
      double leastMm2,
      double mostMm2,
      String sleeve,
      double leastShare,
      String balance) {
    Require.within("least share of a splice's thinner side", leastShare, 0, 0.5, "");
    List<Check> checks = new ArrayList<>();
    checks.add(
        FitRange.check(
            "copper in the splice", copper.totalMm2(), leastMm2, mostMm2, "mm²", sleeve));
    checks.add(
        Check.atLeast(
            "share of the thinner side in the splice",
            copper.thinnerShare(),
            leastShare,
            "1",
            "at least " + Require.text(exact(100 * leastShare)) + " % of the copper",
            balance));
    return checks;
  }

  private static double side(String words, List<Strand> strands, Trace.Builder trace) {
    double sum = 0;
    for (Strand it : strands) {
      trace.given(words + ": " + it.name(), it.areaMm2(), "mm²");
      sum += it.areaMm2();
    }
    double all = exact(sum);
    trace.line(words + " in all", "sum", all, "mm²", "");
    return all;
  }

  /** Sizes are written with few decimals; sums of them must not end in binary dust. */
  private static double exact(double value) {
    return Math.rint(value * 1e9) / 1e9;
  }
}
