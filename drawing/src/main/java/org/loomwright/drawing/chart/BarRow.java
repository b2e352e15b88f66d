package org.loomwright.drawing.chart;

import java.util.OptionalDouble;

/**
 * One figure against its limit.
 *
 * @param name what the figure belongs to, e.g. a lead or a need
 * @param figure the figure, in the unit of the scale; empty where it is not known
 * @param limit largest figure allowed
 * @param marginalFrom where the marginal band begins; at most the limit, and equal to it for no
 *     band
 * @param state how the figure stands; told by the shape of the bar
 * @param verdict the same in words, e.g. "holds" or "5 K too hot"
 */
public record BarRow(
    String name,
    OptionalDouble figure,
    double limit,
    double marginalFrom,
    State state,
    String verdict) {
  private static final double MOST = 1e9;

  /** Checks that the figures are numbers and in order. */
  public BarRow {
    within(name, "limit", limit);
    within(name, "start of the marginal band", marginalFrom);
    figure.ifPresent(it -> within(name, "figure", it));
    if (marginalFrom > limit) {
      throw new IllegalArgumentException(
          name + ": the marginal band begins at " + marginalFrom + ", above the limit of " + limit);
    }
  }

  /** How a figure stands against its limit. */
  public enum State {
    /** Below the marginal band: a light bar. */
    HOLDS,
    /** In the marginal band: a hatched bar. */
    MARGINAL,
    /** Above the limit: a dark bar. */
    FAILS,
    /** Not known: no bar. */
    UNKNOWN
  }

  private static void within(String name, String what, double value) {
    if (!(Math.abs(value) <= MOST)) {
      throw new IllegalArgumentException(
          name + ": " + what + " is " + value + ", which is no figure of at most " + MOST);
    }
  }
}
