package org.loomwright.model.design;

import java.util.List;

/**
 * One check of a kit.
 *
 * @param id stable id, e.g. "drop/L3/B"
 * @param name what is checked, e.g. "voltage drop on the feed"
 * @param subject what it is checked on, e.g. "lead L3"
 * @param cases cases it is worst in
 * @param figure value found
 * @param limit limit
 * @param atMost true when the figure must not exceed the limit, false when it must reach it
 * @param unit unit of figure and limit
 * @param margin distance from the limit on the good side, as share of the limit; negative when it
 *     fails
 * @param verdict verdict
 * @param source where the limit comes from
 * @param trace how the figure was found
 */
public record Check(
    String id,
    String name,
    String subject,
    List<String> cases,
    double figure,
    double limit,
    boolean atMost,
    String unit,
    double margin,
    Verdict verdict,
    String source,
    List<TraceLine> trace) {
  public Check {
    cases = List.copyOf(cases);
    trace = List.copyOf(trace);
  }

  /**
   * A check with its margin and verdict worked out.
   *
   * @param marginalBand margin below which the check is called marginal, as share of the limit
   */
  public static Check of(
      String id,
      String name,
      String subject,
      List<String> cases,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      double marginalBand,
      String source,
      List<TraceLine> trace) {
    double distance = atMost ? limit - figure : figure - limit;
    // Of a limit of zero there are no shares: kept is kept, and not kept is all of it.
    double margin =
        limit == 0
            ? (distance >= 0 ? 0 : distance < 0 ? -1 : Double.NaN)
            : distance / Math.abs(limit);
    // A figure that is not a number must never pass.
    Verdict verdict =
        margin >= marginalBand ? Verdict.HOLDS : margin >= 0 ? Verdict.MARGINAL : Verdict.FAILS;
    return new Check(
        id, name, subject, cases, figure, limit, atMost, unit, margin, verdict, source, trace);
  }
}
