package org.loomwright.physics.wire;

import org.loomwright.physics.Trace;

/** Mass of a metre of insulated wire. */
public final class WireMass {
  private WireMass() {}

  /**
   * @param copperGPerM mass of the conductor, g/m
   * @param insulationGPerM mass of the insulation, g/m
   * @param trace how it was reached
   */
  public record Result(double copperGPerM, double insulationGPerM, Trace trace) {
    /** Both together, g/m. */
    public double totalGPerM() {
      return copperGPerM + insulationGPerM;
    }
  }

  /**
   * m = ρCu · A + ρi · π/4 · (D² - d²), in g/m with ρ in g/cm³ and mm: copper area A, outside
   * diameter D, conductor diameter d. Copper 8.89 g/cm³ (IEC 60028). Against a published data sheet
   * of medium-wall wire it comes within 10 %, most of it the sheet's rounding.
   */
  public static Result of(Conductor c, InsulationMaterial material) {
    double copper = ConductorMetal.COPPER.densityGPerCm3() * c.areaMm2();
    double ring =
        Math.PI
            / 4
            * (c.overallDiameterMm() * c.overallDiameterMm()
                - c.conductorDiameterMm() * c.conductorDiameterMm());
    double insulation = material.densityGPerCm3() * ring;
    Trace trace =
        Trace.builder()
            .line("copper area of " + c.label(), "table", c.areaMm2(), "mm²", c.source())
            .line("copper", "8.89 A", copper, "g/m", "IEC 60028")
            .line(
                "insulation area",
                "pi/4 (D² - d²)",
                ring,
                "mm²",
                "outside and conductor diameter: " + c.source())
            .line("insulation", "density * area", insulation, "g/m", material.source())
            .line("mass per metre", "sum", copper + insulation, "g/m", "sum")
            .build();
    return new Result(copper, insulation, trace);
  }
}
