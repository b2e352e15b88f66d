package org.loomwright.planner.sizing;

import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;

/** From a wire of the parts list to the conductor the sums know. */
public final class Conductors {
  private Conductors() {}

  /**
   * The conductor of a wire, with the wire's own outside diameter.
   *
   * @throws org.loomwright.physics.wire.UnknownConductorException for a size no table has
   */
  public static Conductor of(Wire wire) {
    Conductor table = of(wire.size());
    return new Conductor(
        table.label(),
        table.areaMm2(),
        table.ohmPerM20C(),
        table.conductorDiameterMm(),
        Math.max(wire.diameter().mm(), table.conductorDiameterMm() * 1.001),
        table.source());
  }

  /**
   * The conductor of a size.
   *
   * @throws org.loomwright.physics.wire.UnknownConductorException for a size no table has
   */
  public static Conductor of(WireSize size) {
    return size.awg().isPresent()
        ? Conductor.awg(size.awg().getAsInt())
        : Conductor.metric(size.areaMm2());
  }

  /**
   * The insulation family for short-circuit sums.
   *
   * @throws org.loomwright.physics.SumException for a material without a published k
   */
  public static Insulation insulation(Wire wire) {
    return Insulation.parse(wire.insulation());
  }
}
