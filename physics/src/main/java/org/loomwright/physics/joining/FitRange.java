package org.loomwright.physics.joining;

import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;

/** A size held against the range a part takes, such as a wire against a crimp or a seal. */
public final class FitRange {
  private FitRange() {}

  /**
   * The check against the bound that is nearer by share.
   *
   * @param name what is checked
   * @param value the size, zero or more
   * @param least smallest size the part takes, above zero
   * @param most largest size the part takes, not below {@code least}
   * @param unit unit of all three
   * @param source where the range comes from
   * @throws SumException when the range is none
   */
  public static Check check(
      String name, double value, double least, double most, String unit, String source) {
    Require.notNegative(name, value, unit);
    Require.positive("smallest size: " + name, least, unit);
    if (!(most >= least)) {
      throw new SumException(
          name
              + ": the largest size, "
              + Require.text(most)
              + " "
              + unit
              + ", is below the smallest, "
              + Require.text(least)
              + " "
              + unit);
    }
    String rule = "from " + Require.text(least) + " to " + Require.text(most) + " " + unit;
    Check low = Check.atLeast(name, value, least, unit, rule, source);
    Check high = Check.atMost(name, value, most, unit, rule, source);
    return low.margin() < high.margin() ? low : high;
  }
}
