package org.loomwright.physics.heat;

import org.loomwright.physics.Require;

/**
 * A stretch of time at one current.
 *
 * @param currentA current, A, 0 to 100 000
 * @param durationS how long, s, 0 to 1e8
 */
public record Phase(double currentA, double durationS) {
  /** Checks the ranges. */
  public Phase {
    Require.within("current", currentA, 0, 100_000, "A");
    Require.within("duration", durationS, 0, 1e8, "s");
  }
}
