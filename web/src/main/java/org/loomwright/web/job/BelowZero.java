package org.loomwright.web.job;

import java.util.Collection;
import java.util.Optional;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.MeterNumber;

/** Numbers below zero where none can be, which every band without a low limit would let pass. */
public final class BelowZero {
  private BelowZero() {}

  /**
   * What is wrong with a number below zero; empty for one that is not, and where a band reaches
   * below zero.
   *
   * @param bands bands the number may lie in; empty where any will do
   */
  public static Optional<String> wrong(MeterNumber number, Collection<Band> bands) {
    boolean below = bands.stream().anyMatch(it -> it.low().filter(low -> low < 0).isPresent());
    return !number.isNegative() || below
        ? Optional.empty()
        : Optional.of(
            number.words()
                + " is below zero: the leads of the meter are swapped, or the clamp is the wrong"
                + " way round; swap them and measure again");
  }
}
