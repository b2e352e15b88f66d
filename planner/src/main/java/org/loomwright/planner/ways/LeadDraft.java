package org.loomwright.planner.ways;

import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.planner.landing.Touch;

/**
 * A lead before its wire is chosen.
 *
 * @param kind what it carries
 * @param a end the current comes from
 * @param b end the current goes to
 */
public record LeadDraft(CircuitKind kind, Touch a, Touch b) {
  /** Name that is equal exactly when two ways mean the same lead. */
  public String key() {
    return a.key() + " > " + b.key();
  }
}
