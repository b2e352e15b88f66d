package org.loomwright.physics.heat;

/**
 * Diameter of a round bundle of equal wires over the diameter of one.
 *
 * <p>Best known packings of equal circles in a circle up to 19; where a count is not in the table,
 * the next smaller count's ratio. Above 19 the bound √(n / 0.9069), which no packing can beat
 * (hexagonal density π/√12). Both give a tight bundle, so less surface than a real one: the
 * cautious side for heat.
 */
final class BundleShape {
  static final String SOURCE =
      "best known packings of equal circles in a circle (Graham, Lubachevsky, Nurmela and"
          + " Östergård 1998); above 19 wires hexagonal density";

  static final double HEXAGONAL_DENSITY = Math.PI / Math.sqrt(12);

  /** Ratio by count; index 0 is one wire. */
  private static final double[] RATIO = {
    1,
    2,
    2.154700538,
    2.414213562,
    2.701301617,
    3,
    3,
    3,
    3.613125929,
    3.813025631,
    3.813025631,
    4.029601930,
    4.236067977,
    4.236067977,
    4.521356964,
    4.615425594,
    4.615425594,
    4.863703305,
    4.863703305
  };

  private BundleShape() {}

  /** Ratio of bundle diameter to wire diameter; {@code wires} from 1. */
  static double ratio(int wires) {
    if (wires <= RATIO.length) {
      return RATIO[wires - 1];
    }
    return Math.max(RATIO[RATIO.length - 1], Math.sqrt(wires / HEXAGONAL_DENSITY));
  }
}
