package org.loomwright.physics.wire;

import org.loomwright.physics.Require;

/** Constants and temperature law of copper. */
public final class Copper {
  /**
   * Resistivity at 20 °C of annealed copper of 100 % IACS, ohm·mm²/m; IEC 60028, equal to 1/58
   * rounded.
   */
  public static final double RESISTIVITY_OHM_MM2_PER_M = 0.017241;

  /**
   * Minus the inferred temperature of zero resistance of copper, °C; FAA AC 43.13-1B par. 11-66d,
   * IEC 60949.
   */
  public static final double ZERO_RESISTANCE_C = 234.5;

  /** Melting point, °C; bounds every temperature sum here. */
  public static final double MELTING_C = 1083;

  /** Source of {@link #resistanceFactor}. */
  public static final String TEMPERATURE_SOURCE =
      "FAA AC 43.13-1B par. 11-66d, form (234.5+T)/254.5";

  /** Lowest temperature at which the straight line is used, °C. */
  private static final double LOWEST_C = -100;

  private Copper() {}

  /**
   * Resistance at a temperature over resistance at 20 °C: (234.5+T)/(234.5+20).
   *
   * @param temperatureC T in °C, -100 to 1083 °C. The straight line is exact enough for wiring
   *     (within 1 %) from -50 to 250 °C; above that it reads low by a few percent
   */
  public static double resistanceFactor(double temperatureC) {
    Require.within("conductor temperature", temperatureC, LOWEST_C, MELTING_C, "°C");
    return (ZERO_RESISTANCE_C + temperatureC) / (ZERO_RESISTANCE_C + 20);
  }
}
