package org.loomwright.physics.heat;

import java.util.List;

/**
 * What lies between the bare outside of a wire or bundle and the still air: coverings and the heat
 * that the outermost surface gives off.
 *
 * @param bareDiameterMm outside of wire or bundle, mm
 * @param ambientC still air and surroundings, °C
 * @param coverings from the inside out, possibly none
 */
record Surroundings(double bareDiameterMm, double ambientC, List<Covering> coverings) {
  /** Air properties end at 700 K film temperature; a surface hotter than this has long melted. */
  private static final double HIGHEST_OUTSIDE_C = 1100;

  Surroundings {
    coverings = List.copyOf(coverings);
  }

  /**
   * One balanced state.
   *
   * @param outsideC temperature of the outermost surface
   * @param bareC temperature of the bare wire or bundle under the coverings
   * @param heat what the outermost surface gives off
   */
  record Flow(double outsideC, double bareC, SurfaceHeat heat) {}

  double outsideDiameterMm() {
    double diameterMm = bareDiameterMm;
    for (Covering layer : coverings) {
      diameterMm += layer.addedDiameterMm();
    }
    return diameterMm;
  }

  /** The state with a temperature outside, °C, not below the ambient. */
  Flow atOutside(double outsideC) {
    double diameterMm = outsideDiameterMm();
    SurfaceHeat heat = SurfaceHeat.of(diameterMm, outsideC, ambientC, HeatBalance.EMISSIVITY);
    double q = heat.totalWPerM();
    double t = outsideC;
    for (int i = coverings.size() - 1; i >= 0; i--) {
      Covering layer = coverings.get(i);
      diameterMm -= layer.addedDiameterMm();
      t = layer.insideC(diameterMm, t, q);
    }
    return new Flow(outsideC, t, heat);
  }

  /** The state that gives off a heat, W/m, not below zero. */
  Flow atHeat(double heatWPerM) {
    double d = outsideDiameterMm();
    double outsideC =
        Roots.rising(
            t -> SurfaceHeat.of(d, t, ambientC, HeatBalance.EMISSIVITY).totalWPerM() - heatWPerM,
            ambientC,
            HIGHEST_OUTSIDE_C,
            1e-10);
    return atOutside(outsideC);
  }
}
