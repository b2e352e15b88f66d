package org.loomwright.planner.sizing;

import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;
import org.loomwright.physics.wire.UnknownConductorException;

/** From a wire of the parts list to the conductor the sums know. */
public final class Conductors {
  /** Insulation wall where none is on file, mm (thin wall, common practice). */
  private static final double LEAST_WALL_MM = 0.3;

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
   * The conductor of a factory wire: by the tables, or for a size no table has a solid one of
   * annealed copper.
   */
  public static Conductor ofFactory(WireSize size) {
    try {
      return of(size);
    } catch (UnknownConductorException notInTheTable) {
      double diameterMm = Math.sqrt(4 * size.areaMm2() / Math.PI);
      return new Conductor(
          size.text(),
          size.areaMm2(),
          Copper.RESISTIVITY_OHM_MM2_PER_M / size.areaMm2(),
          diameterMm,
          diameterMm + 2 * LEAST_WALL_MM,
          "resistivity of annealed copper, IEC 60028");
    }
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
