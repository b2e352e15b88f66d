package org.loomwright.physics.protection;

import org.loomwright.physics.Require;

/**
 * What is left of a fuse's rating in warm surroundings.
 *
 * <p>Points of the large blade (40 A, taken over to its other ratings): 1.0 from -40 to 20 °C, 0.75
 * at 85 °C, 0.55 at 125 °C, straight between them. For the other families no points are known; they
 * take the same line, which is steeper than the 0.1 to 0.2 % per kelvin makers usually draw for
 * small blades (from memory) and so cautious for carrying a load. A fuse in the cold opens later
 * than its limits say at 23 °C; below 20 °C the limits are taken as they are.
 */
public final class FuseRerating {
  /** Lowest ambient, °C. */
  public static final double LOWEST_C = -40;

  /** Highest ambient, °C. */
  public static final double HIGHEST_C = 125;

  private static final double[] AMBIENT_C = {LOWEST_C, 20, 85, HIGHEST_C};
  private static final double[] FACTOR = {1.0, 1.0, 0.75, 0.55};

  private FuseRerating() {}

  /**
   * Share of the rating that the fuse carries for good at an ambient.
   *
   * @param family its form
   * @param ambientC air at the fuse, -40 to 125 °C
   * @return 0.55 to 1
   */
  public static double factor(FuseFamily family, double ambientC) {
    Require.within("ambient of the " + family.label(), ambientC, LOWEST_C, HIGHEST_C, "°C");
    int i = 0;
    while (i < AMBIENT_C.length - 2 && ambientC > AMBIENT_C[i + 1]) {
      i++;
    }
    double part = (ambientC - AMBIENT_C[i]) / (AMBIENT_C[i + 1] - AMBIENT_C[i]);
    return FACTOR[i] + part * (FACTOR[i + 1] - FACTOR[i]);
  }

  /**
   * The factor as a formula of a trace, over the ambient of that name.
   *
   * @param ambient name of the line that holds the ambient
   */
  static String formula(String ambient, double ambientC) {
    int i = 0;
    while (i < AMBIENT_C.length - 2 && ambientC > AMBIENT_C[i + 1]) {
      i++;
    }
    return "f1 + ("
        + ambient
        + " - T1) * (f2 - f1) / (T2 - T1), f1 = "
        + Require.text(FACTOR[i])
        + ", f2 = "
        + Require.text(FACTOR[i + 1])
        + ", T1 = "
        + Require.text(AMBIENT_C[i])
        + " °C, T2 = "
        + Require.text(AMBIENT_C[i + 1])
        + " °C";
  }

  /** Where the factor of a family comes from. */
  public static String source(FuseFamily family) {
    return family == FuseFamily.LARGE_BLADE
        ? "a fuse maker's data sheet, 40 A blade type E, straight between its points"
        : "points of the 40 A blade type E taken over, cautious; none known for the "
            + family.label();
  }
}
