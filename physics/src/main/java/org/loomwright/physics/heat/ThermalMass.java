package org.loomwright.physics.heat;

import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.ConductorMetal;
import org.loomwright.physics.wire.InsulationMaterial;

/**
 * Heat that a metre of wire stores per kelvin.
 *
 * @param copperJPerMK ρc · A of the conductor, 3.45 J/(cm³·K) (IEC 60949), J/(m·K)
 * @param insulationJPerMK ρc · π/4 · (D² - d²) of the insulation, or 0 where it is left out,
 *     J/(m·K)
 * @param source where the figures come from
 */
public record ThermalMass(double copperJPerMK, double insulationJPerMK, String source) {
  /** Copper alone: what counts in the first seconds, and cautious at all times. */
  public static ThermalMass copperOnly(Conductor c) {
    return new ThermalMass(
        ConductorMetal.COPPER.heatCapacityJPerCm3K() * c.areaMm2(), 0, "IEC 60949");
  }

  /** Copper and the whole insulation as one body: for times well above a second. */
  public static ThermalMass whole(Conductor c, InsulationMaterial material) {
    double ring =
        Math.PI
            / 4
            * (c.overallDiameterMm() * c.overallDiameterMm()
                - c.conductorDiameterMm() * c.conductorDiameterMm());
    return new ThermalMass(
        copperOnly(c).copperJPerMK(),
        material.heatCapacityJPerCm3K() * ring,
        "IEC 60949; insulation: " + material.source());
  }

  /** Both together, J/(m·K). */
  public double totalJPerMK() {
    return copperJPerMK + insulationJPerMK;
  }
}
