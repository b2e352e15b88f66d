package org.loomwright.physics.heat;

/**
 * Heat given off by one metre of a long horizontal cylinder to still air and surroundings of the
 * same temperature.
 *
 * @param rayleigh Rayleigh number on the diameter
 * @param nusselt Nusselt number
 * @param convectionWPerM heat by natural convection, W/m
 * @param radiationWPerM heat by radiation, W/m
 */
record SurfaceHeat(double rayleigh, double nusselt, double convectionWPerM, double radiationWPerM) {
  static final String CONVECTION_SOURCE =
      "Churchill and Chu 1975, horizontal cylinder, Ra up to 1e12; air: " + Air.SOURCE;

  static final double KELVIN = 273.15;
  private static final double GRAVITY = 9.80665;
  static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  double totalWPerM() {
    return convectionWPerM + radiationWPerM;
  }

  /**
   * Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))², Ra = g β ΔT D³ / (ν α), β =
   * 1/T, properties at the mean of surface and air.
   *
   * @param diameterMm cylinder diameter, mm
   * @param surfaceC surface temperature, °C, not below the ambient
   * @param ambientC air and surroundings, °C
   * @param emissivity of the surface, 0 to 1
   */
  static SurfaceHeat of(double diameterMm, double surfaceC, double ambientC, double emissivity) {
    double diameterM = diameterMm / 1000;
    double surfaceK = surfaceC + KELVIN;
    double ambientK = ambientC + KELVIN;
    double filmK = (surfaceK + ambientK) / 2;
    double rise = surfaceK - ambientK;
    double rayleigh =
        GRAVITY
            / filmK
            * rise
            * Math.pow(diameterM, 3)
            / (Air.kinematicViscosity(filmK) * Air.diffusivity(filmK));
    double prandtlTerm = Math.pow(1 + Math.pow(0.559 / Air.prandtl(filmK), 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / prandtlTerm;
    double nusselt = root * root;
    double convection = nusselt * Air.conductivity(filmK) * Math.PI * rise;
    double radiation =
        emissivity
            * STEFAN_BOLTZMANN
            * Math.PI
            * diameterM
            * (Math.pow(surfaceK, 4) - Math.pow(ambientK, 4));
    return new SurfaceHeat(rayleigh, nusselt, convection, radiation);
  }
}
