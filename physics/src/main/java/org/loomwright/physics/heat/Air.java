package org.loomwright.physics.heat;

/**
 * Properties of dry air at sea-level pressure (101.325 kPa).
 *
 * <p>Viscosity and conductivity: U.S. Standard Atmosphere 1976, equations 51 and 53. Density: ideal
 * gas. Heat capacity: 1006 J/(kg·K), which holds within 1 % from -50 to 150 °C. Good from 200 to
 * 700 K film temperature.
 */
final class Air {
  static final String SOURCE = "U.S. Standard Atmosphere 1976, eq. 51 and 53, at 101.325 kPa";

  private static final double PRESSURE_PA = 101_325;
  private static final double GAS_CONSTANT = 287.053;
  private static final double HEAT_CAPACITY = 1006;

  private Air() {}

  /** Dynamic viscosity, Pa·s, at T kelvin: 1.458e-6 · T^1.5 / (T + 110.4). */
  static double viscosity(double kelvin) {
    return 1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4);
  }

  /** Conductivity, W/(m·K): 2.64638e-3 · T^1.5 / (T + 245.4 · 10^(-12/T)). */
  static double conductivity(double kelvin) {
    return 2.64638e-3 * Math.pow(kelvin, 1.5) / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
  }

  /** Density, kg/m³. */
  static double density(double kelvin) {
    return PRESSURE_PA / (GAS_CONSTANT * kelvin);
  }

  /** Kinematic viscosity, m²/s. */
  static double kinematicViscosity(double kelvin) {
    return viscosity(kelvin) / density(kelvin);
  }

  /** Thermal diffusivity, m²/s. */
  static double diffusivity(double kelvin) {
    return conductivity(kelvin) / (density(kelvin) * HEAT_CAPACITY);
  }

  /** Prandtl number, about 0.7. */
  static double prandtl(double kelvin) {
    return viscosity(kelvin) * HEAT_CAPACITY / conductivity(kelvin);
  }
}
