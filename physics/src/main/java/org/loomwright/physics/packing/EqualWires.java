package org.loomwright.physics.packing;

/**
 * Diameter of a round bundle of equal wires over the diameter of one.
 *
 * <p>Best known packings of equal circles in a circle up to 19. Above 19 the bound √(n / 0.9069),
 * which no packing can beat (hexagonal density π/√12). Both give a tight bundle, so less surface
 * than a real one: the cautious side for heat.
 */
public final class EqualWires {
  /** Where the ratios come from. */
  public static final String SOURCE =
      "best known packings of equal circles in a circle (Graham, Lubachevsky, Nurmela and"
          + " Östergård 1998); above 19 wires hexagonal density";

  /** Share of the area that the densest packing of equal circles fills: π/√12. */
  public static final double HEXAGONAL_DENSITY = Math.PI / Math.sqrt(12);

  /** Ratio by count, last digit cut off; index 0 is one wire. */
  private static final double[] RATIO = {
    1,
    2,
    2.154700538,
    2.414213562,
    2.701301616,
    3,
    3,
    3.304764870,
    3.613125929,
    3.813025631,
    3.923804400,
    4.029601930,
    4.236067977,
    4.328428554,
    4.521356964,
    4.615425594,
    4.792033748,
    4.863703305,
    4.863703305
  };

  /** Up to this many the ratios are proven to be the smallest; so is that of 19. */
  private static final int PROVEN = 13;

  private EqualWires() {}

  /**
   * A ratio that no packing of so many equal circles can fall below, from the proven part of the
   * table: exact up to 13 and for 19, otherwise that of the next smaller such count.
   */
  static double provenRatio(int wires) {
    return RATIO[wires >= RATIO.length ? RATIO.length - 1 : Math.min(wires, PROVEN) - 1];
  }

  /** Ratio of bundle diameter to wire diameter; {@code wires} from 1. */
  public static double ratio(int wires) {
    if (wires <= RATIO.length) {
      return RATIO[wires - 1];
    }
    return Math.max(RATIO[RATIO.length - 1], Math.sqrt(wires / HEXAGONAL_DENSITY));
  }
}
