package org.loomwright.planner.electrics;

/**
 * One link on the way between a source and a pin.
 *
 * @param name name of the link
 * @param ohm its resistance, ohm
 * @param currentA most current through it in any load state at any supply voltage, A
 * @param source where the resistance comes from
 */
public record PathPart(String name, double ohm, double currentA, String source) {
  /** Most voltage across it, V. */
  public double dropV() {
    return ohm * currentA;
  }
}
