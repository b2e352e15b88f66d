package org.loomwright.physics.wire;

/**
 * Physical data of insulation materials: density for the mass of a wire, volumetric heat capacity
 * for how fast it warms, conductivity across it.
 */
public enum InsulationMaterial {
  /** Plasticised PVC. */
  PVC(1.40, 1.7, 0.20, "IEC 60853-2 and IEC 60287-2-1 (5.0 K m/W up to 3 kV); density from memory"),
  /**
   * Cross-linked polyethylene with flame retardant. The density is the one that makes the weights
   * of a published GXL data sheet come out; clean XLPE would be 0.92.
   */
  XLPE(
      1.40,
      2.4,
      0.286,
      "IEC 60853-2 and IEC 60287-2-1 (3.5 K m/W); density fitted to a wire maker's data sheet"),
  /** EPR and similar rubber. */
  RUBBER(1.30, 2.0, 0.20, "IEC 60853-2 and IEC 60287-2-1 (5.0 K m/W); all from memory"),
  /** Silicone rubber. */
  SILICONE(1.20, 1.5, 0.20, "IEC 60287-2-1 (5.0 K m/W); density and heat capacity from memory"),
  /** ETFE. */
  ETFE(1.70, 1.6, 0.24, "from memory");

  private final double densityGPerCm3;
  private final double heatCapacityJPerCm3K;
  private final double conductivityWPerMK;
  private final String source;

  InsulationMaterial(
      double densityGPerCm3,
      double heatCapacityJPerCm3K,
      double conductivityWPerMK,
      String source) {
    this.densityGPerCm3 = densityGPerCm3;
    this.heatCapacityJPerCm3K = heatCapacityJPerCm3K;
    this.conductivityWPerMK = conductivityWPerMK;
    this.source = source;
  }

  /** Density, g/cm³. */
  public double densityGPerCm3() {
    return densityGPerCm3;
  }

  /** Volumetric heat capacity, J/(cm³·K), the same figure as J/(m·K) per mm². */
  public double heatCapacityJPerCm3K() {
    return heatCapacityJPerCm3K;
  }

  /** Thermal conductivity, W/(m·K). */
  public double conductivityWPerMK() {
    return conductivityWPerMK;
  }

  /** Where the figures come from. */
  public String source() {
    return source;
  }
}
