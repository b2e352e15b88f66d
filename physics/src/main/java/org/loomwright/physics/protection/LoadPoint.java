package org.loomwright.physics.protection;

import org.loomwright.physics.Require;

/**
 * A current a load draws for a time.
 *
 * @param name e.g. "starting current"
 * @param currentA 0 to 100 000 A
 * @param durationS 0 to 1e6 s
 */
public record LoadPoint(String name, double currentA, double durationS) {
  /** Checks the ranges. */
  public LoadPoint {
    Require.within(name, currentA, 0, 100_000, "A");
    Require.within("duration of " + name, durationS, 0, 1e6, "s");
  }
}
