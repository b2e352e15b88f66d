package org.loomwright.physics.heat;

/** Still air between two concentric cylinders: conduction and radiation, no convection. */
final class AirGap {
  /** Beyond this an inner surface is called melted anyway, °C. */
  private static final double HIGHEST_C = 3000;

  private AirGap() {}

  /**
   * Heat through the gap, W/m: q = 2π k(Tm) (Ti - To) / ln(Do/Di) + εe σ π Di (Ti⁴ - To⁴), 1/εe =
   * 1/ε + (Di/Do)(1/ε - 1).
   */
  static double heatWPerM(double innerMm, double outerMm, double innerC, double outerC) {
    double innerK = innerC + SurfaceHeat.KELVIN;
    double outerK = outerC + SurfaceHeat.KELVIN;
    double conduction =
        2
            * Math.PI
            * Air.conductivity((innerK + outerK) / 2)
            * (innerK - outerK)
            / Math.log(outerMm / innerMm);
    double gray = 1 / HeatBalance.EMISSIVITY;
    double exchange = 1 / (gray + innerMm / outerMm * (gray - 1));
    double radiation =
        exchange
            * SurfaceHeat.STEFAN_BOLTZMANN
            * Math.PI
            * innerMm
            / 1000
            * (Math.pow(innerK, 4) - Math.pow(outerK, 4));
    return conduction + radiation;
  }

  /** Temperature of the inner surface that drives a heat outward, °C. */
  static double innerC(double innerMm, double outerMm, double outerC, double heatWPerM) {
    return Roots.rising(
        t -> heatWPerM(innerMm, outerMm, t, outerC) - heatWPerM,
        outerC,
        Math.max(outerC, HIGHEST_C),
        1e-10);
  }
}
