package org.loomwright.planner.proof;

import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.UnknownConductorException;

/** Wire sizes of documents as conductors of the sums. */
final class Copper {
  /** Stranded conductor over the diameter of the same copper as one round (common practice). */
  private static final double STRANDED = 1.15;

  /** Insulation wall where none is on file, mm (thin wall, common practice). */
  private static final double WALL_MM = 0.4;

  private Copper() {}

  /**
   * A tabled conductor where there is one, otherwise one of solid copper with the same area.
   *
   * @param overallDiameterMm outside diameter on file, 0 when there is none
   */
  static Conductor conductor(WireSize size, double overallDiameterMm) {
    Conductor tabled = tabled(size);
    return overallDiameterMm > tabled.conductorDiameterMm()
        ? new Conductor(
            tabled.label(),
            tabled.areaMm2(),
            tabled.ohmPerM20C(),
            tabled.conductorDiameterMm(),
            overallDiameterMm,
            tabled.source())
        : tabled;
  }

  private static Conductor tabled(WireSize size) {
    if (size.awg().isPresent()) {
      return Conductor.awg(size.awg().getAsInt());
    }
    try {
      return Conductor.metric(size.areaMm2());
    } catch (UnknownConductorException notInTheTable) {
      double diameterMm = Math.sqrt(4 * size.areaMm2() / Math.PI) * STRANDED;
      return new Conductor(
          size.text(),
          size.areaMm2(),
          org.loomwright.physics.wire.Copper.RESISTIVITY_OHM_MM2_PER_M / size.areaMm2(),
          diameterMm,
          diameterMm + 2 * WALL_MM,
          "resistivity of annealed copper, IEC 60028");
    }
  }
}
