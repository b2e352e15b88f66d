package org.loomwright.planner.electrics;

import java.util.Optional;
import org.loomwright.physics.network.Wire;

/**
 * One link on the way between a source and a pin.
 *
 * @param name name of the link
 * @param wire the wire, where it is one and not a contact, a fuse or a joint
 * @param ohm its resistance, ohm
 * @param currentA most current through it in any load state at any supply voltage, A
 * @param source where the resistance comes from
 */
public record PathPart(
    String name, Optional<Wire> wire, double ohm, double currentA, String source) {
  /** Most voltage across it, V. */
  public double dropV() {
    return ohm * currentA;
  }
}
