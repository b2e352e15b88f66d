package org.loomwright.planner.electrics;

import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.Sourced;

/**
 * A resistance and where it comes from.
 *
 * @param ohm resistance, ohm
 * @param source source in words
 */
public record Ohms(double ohm, String source) {
  /** A resistance on file or by default. */
  public static Ohms of(Sourced<Resistance> resistance) {
    return new Ohms(resistance.value().ohms(), resistance.source());
  }
}
