package org.loomwright.physics.network;

import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;

/** Checks common to all elements. */
final class Elements {
  /**
   * Least resistance of one element, ohm. A joint below a millionth of an ohm is better joined to
   * one node; how current splits between such joints is a matter of chance.
   */
  static final double LEAST_OHM = 1e-6;

  /** Largest resistance of one element, ohm. */
  static final double MOST_OHM = 1e9;

  private Elements() {}

  static void ends(String kind, String name, String from, String to) {
    if (name.isBlank() || from.isBlank() || to.isBlank()) {
      throw new SumException(
          "a "
              + kind
              + " needs a name and two nodes, but has \""
              + name
              + "\" from \""
              + from
              + "\" to \""
              + to
              + "\"");
    }
    if (from.equals(to)) {
      throw new SumException(
          kind
              + " \""
              + name
              + "\" must join two different nodes, but both ends are on \""
              + from
              + "\"");
    }
  }

  static void resistance(String kind, String name, double ohm) {
    if (!(ohm >= LEAST_OHM && ohm <= MOST_OHM)) {
      throw new SumException(
          kind
              + " \""
              + name
              + "\" must have a resistance from "
              + Require.text(LEAST_OHM)
              + " to "
              + Require.text(MOST_OHM)
              + " ohm, but has "
              + Require.text(ohm)
              + " ohm: give its real resistance, or make its two nodes one");
    }
  }
}
