package org.loomwright.physics.wire;

/**
 * Constants of the metals that conductors are made of. Aluminium is given as data only: no wire
 * table, sum or check here takes it.
 *
 * @param name the metal
 * @param resistivityOhmMm2PerM resistivity at 20 °C, ohm·mm²/m
 * @param zeroResistanceC minus the inferred temperature of zero resistance, °C
 * @param heatCapacityJPerCm3K volumetric heat capacity at 20 °C, J/(cm³·K)
 * @param densityGPerCm3 density at 20 °C, g/cm³
 * @param source where the figures come from
 */
public record ConductorMetal(
    String name,
    double resistivityOhmMm2PerM,
    double zeroResistanceC,
    double heatCapacityJPerCm3K,
    double densityGPerCm3,
    String source) {
  /** Annealed copper of 100 % IACS. */
  public static final ConductorMetal COPPER =
      new ConductorMetal(
          "copper",
          Copper.RESISTIVITY_OHM_MM2_PER_M,
          Copper.ZERO_RESISTANCE_C,
          3.45,
          8.89,
          "IEC 60028 (resistivity, density), FAA AC 43.13-1B par. 11-66d (234.5 °C), IEC 60949 (heat"
              + " capacity)");

  /** Aluminium. The standard for short circuits uses 228 °C in place of 238.1 °C. */
  public static final ConductorMetal ALUMINIUM =
      new ConductorMetal(
          "aluminium",
          0.028264,
          238.1,
          2.5,
          2.703,
          "IEC 60889 (resistivity; density from memory), FAA AC 43.13-1B par. 11-66d (238.1 °C), IEC"
              + " 60949 (heat capacity)");
}
