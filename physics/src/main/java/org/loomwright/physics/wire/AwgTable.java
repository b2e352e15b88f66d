package org.loomwright.physics.wire;

import java.util.List;

/**
 * American wire gauge. Area and resistance follow the solid conductor of ASTM B258, whatever the
 * stranding: d = 0.005 in · 92^((36-n)/39). A published chart of stranded wire runs from 20 % less
 * to 7 % more resistance for the same gauge; give a measured or catalogue figure where that counts.
 */
final class AwgTable {
  static final String SOURCE =
      "ASTM B258 solid geometry d = 0.005 in * 92^((36-n)/39), 100 % IACS copper"
          + " 0.017241 ohm mm²/m; outside diameter of thin-wall SAE J1128 wire (from memory)";

  static final int LARGEST = -3;
  static final int SMALLEST = 40;

  /** Gauges kept in stock by the trade (common practice), smallest wire first. */
  static final List<Integer> CATALOGUE =
      List.of(26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3);

  /** Diameter of 36 AWG, mm. */
  private static final double BASE_MM = 0.127;

  /**
   * Stranded over solid diameter. A stranded wire chart gives 1.14 to 1.19 for 16 to 24 AWG; the
   * low end is the cautious one for heat.
   */
  private static final double STRANDED_OVER_SOLID = 1.15;

  /** Insulation wall of gauges below 22, mm (from memory). */
  private static final double SMALL_WALL_MM = 0.40;

  /** Insulation wall of gauges above 8, mm (from memory). */
  private static final double LARGE_WALL_MM = 1.1;

  private AwgTable() {}

  static Conductor find(int gauge) {
    if (gauge < LARGEST || gauge > SMALLEST) {
      throw new UnknownConductorException(
          gauge > SMALLEST ? gauge + " AWG" : "gauge number " + gauge,
          "the AWG series used here (0, -1, -2, -3 stand for 1/0, 2/0, 3/0, 4/0)",
          List.of(label(gauge > SMALLEST ? SMALLEST : LARGEST)));
    }
    double solidMm = solidDiameterMm(gauge);
    double areaMm2 = Math.PI / 4 * solidMm * solidMm;
    return new Conductor(
        label(gauge),
        areaMm2,
        Copper.RESISTIVITY_OHM_MM2_PER_M / areaMm2,
        solidMm * STRANDED_OVER_SOLID,
        overallDiameterMm(gauge),
        SOURCE);
  }

  static List<Conductor> sizes() {
    return CATALOGUE.stream().map(AwgTable::find).toList();
  }

  static double solidDiameterMm(int gauge) {
    return BASE_MM * Math.pow(92, (36 - gauge) / 39.0);
  }

  static String label(int gauge) {
    return gauge > 0 ? gauge + " AWG" : (1 - gauge) + "/0 AWG";
  }

  /**
   * Outside diameter of thin-wall wire: SAE J1128 TXL for 22 to 10 AWG (from memory, ±0.1 mm), a
   * published GXL data sheet less its thicker wall for 8 AWG, elsewhere the stranded conductor and
   * a wall from memory.
   */
  private static double overallDiameterMm(int gauge) {
    double[] even22To8 = {1.6, 1.9, 2.2, 2.4, 2.8, 3.3, 3.9, 5.2};
    if (gauge <= 22 && gauge >= 8) {
      int step = (22 - gauge) / 2;
      // An odd gauge takes the diameter of the next smaller even one: less surface is cautious.
      return even22To8[step];
    }
    double wallMm = gauge > 22 ? SMALL_WALL_MM : LARGE_WALL_MM;
    return solidDiameterMm(gauge) * STRANDED_OVER_SOLID + 2 * wallMm;
  }
}
