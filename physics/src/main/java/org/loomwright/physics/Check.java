package org.loomwright.physics;

import java.util.List;

/**
 * A figure held against its limit.
 *
 * @param name what is checked, a fixed phrase
 * @param verdict outcome
 * @param value the figure reached, in {@code unit}
 * @param limit the limit, in {@code unit}
 * @param margin distance to the limit as a share of the limit: positive on the good side, negative
 *     on the wrong side
 * @param unit unit of value and limit
 * @param rule the rule in words, e.g. "at most 10 % of the supply"
 * @param source where the limit comes from
 */
public record Check(
    String name,
    Verdict verdict,
    double value,
    double limit,
    double margin,
    String unit,
    String rule,
    String source) {
  /**
   * Width of the marginal band: a figure on the good side within this share of its limit is
   * marginal. Our own choice, 10 %.
   */
  public static final double MARGINAL_SHARE = 0.10;

  /** Rounding slack, so that a figure exactly at its limit never fails by a last binary digit. */
  private static final double ROUNDING = 1e-9;

  /** Checks that the value is not above the limit. The limit must not be negative. */
  public static Check atMost(
      String name, double value, double limit, String unit, String rule, String source) {
    double margin = limit > 0 ? (limit - value) / limit : value > 0 ? -1 : 0;
    return of(name, value, limit, margin, unit, rule, source);
  }

  /** Checks that the value is not below the limit. The limit must not be negative. */
  public static Check atLeast(
      String name, double value, double limit, String unit, String rule, String source) {
    double margin = limit > 0 ? value / limit - 1 : 1;
    return of(name, value, limit, margin, unit, rule, source);
  }

  /** The worst verdict of a list; holds when the list is empty. */
  public static Verdict worst(List<Check> checks) {
    return checks.stream().map(Check::verdict).reduce(Verdict.HOLDS, Verdict::worse);
  }

  private static Check of(
      String name,
      double value,
      double limit,
      double margin,
      String unit,
      String rule,
      String source) {
    Verdict verdict =
        !(margin >= -ROUNDING)
            ? Verdict.FAILS
            : margin < MARGINAL_SHARE - ROUNDING ? Verdict.MARGINAL : Verdict.HOLDS;
    return new Check(name, verdict, value, limit, margin, unit, rule, source);
  }
}
