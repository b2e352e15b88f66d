package org.loomwright.model.vehicle;

/** How a person finds out which value a trait has. */
public enum TellHow {
  ASK_OWNER,
  LOOK,
  MEASURE_LIVE,
  MEASURE_ISOLATED;

  /** True when a meter gives the answer. */
  public boolean isReading() {
    return this == MEASURE_LIVE || this == MEASURE_ISOLATED;
  }
}
