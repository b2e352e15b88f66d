package org.loomwright.model.vehicle;

/** What a bundle has to keep clear of. */
public enum Hazard {
  /** Parts of the exhaust. */
  EXHAUST,
  /** Parts that move, such as pedals, seats, hinges and drive shafts. */
  MOVING_PART,
  /** Brake, fuel and grease pipes. */
  PIPE,
  /** Battery and chemicals. */
  BATTERY,
  /** Screws and clips of the trim. */
  TRIM_FIXING;

  /** The hazard in words, for people. */
  public String words() {
    return switch (this) {
      case EXHAUST -> "exhaust parts";
      case MOVING_PART -> "moving parts";
      case PIPE -> "brake or fuel pipes";
      case BATTERY -> "the battery";
      case TRIM_FIXING -> "trim fixings";
    };
  }
}
