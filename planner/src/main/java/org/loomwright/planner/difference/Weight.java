package org.loomwright.planner.difference;

/** Which way a change goes. */
public enum Weight {
  WORSE,
  BETTER,
  /** Neither, or a matter of taste. */
  NEUTRAL;

  /** Worse when something grew that should be small. */
  static Weight ofGrowth(double before, double after) {
    return after > before ? WORSE : after < before ? BETTER : NEUTRAL;
  }
}
