package org.loomwright.physics.heat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * AC 43.13-1B Table 11-9: copper wire in large bundles at 70 °C and 60 000 ft, 20 % loaded, so a
 * floor for what a vehicle allows. Ratings between the columns take the next lower one.
 */
public final class FaaCopperTable {
  /** Source of the figures. */
  public static final String SOURCE =
      "FAA AC 43.13-1B Table 11-9: 70 °C, 33 or more wires (9 from size 8 up), 20 % loaded, 60 000"
          + " ft";

  /** Gauge, A at 105, 150 and 200 °C, largest ohm per 1000 ft at 20 °C (tinned). */
  private static final double[][] ROWS = {
    {24, 2.5, 4, 5, 28.40},
    {22, 3, 5, 6, 16.20},
    {20, 4, 7, 9, 9.88},
    {18, 6, 9, 12, 6.23},
    {16, 7, 11, 14, 4.81},
    {14, 10, 14, 18, 3.06},
    {12, 13, 19, 25, 2.02},
    {10, 17, 26, 32, 1.26},
    {8, 38, 57, 71, 0.70},
    {6, 50, 76, 97, 0.44},
    {4, 68, 103, 133, 0.28},
    {2, 95, 141, 179, 0.18},
    {1, 113, 166, 210, 0.15},
    {0, 128, 192, 243, 0.12},
    {-1, 147, 222, 285, 0.09},
    {-2, 172, 262, 335, 0.07},
    {-3, 204, 310, 395, 0.06},
  };

  private static final double FT_PER_M = 1 / 0.3048;

  private FaaCopperTable() {}

  /** Gauges of the table, smallest wire first; 0 to -3 stand for 1/0 to 4/0. */
  public static List<Integer> gauges() {
    return Arrays.stream(ROWS).map(r -> (int) r[0]).toList();
  }

  /**
   * Continuous current, A; empty for a gauge outside the table or a rating below 105 °C.
   *
   * @param gauge AWG number
   * @param ratingC conductor rating, °C
   */
  public static OptionalDouble currentA(int gauge, double ratingC) {
    int column = ratingC >= 200 ? 3 : ratingC >= 150 ? 2 : 1;
    return ratingC >= 105 ? cell(gauge, column) : OptionalDouble.empty();
  }

  /** Largest resistance of tinned wire at 20 °C, ohm/m; empty for a gauge outside the table. */
  public static OptionalDouble ohmPerM20C(int gauge) {
    OptionalDouble perThousandFeet = cell(gauge, 4);
    return perThousandFeet.isPresent()
        ? OptionalDouble.of(perThousandFeet.getAsDouble() * FT_PER_M / 1000)
        : perThousandFeet;
  }

  private static OptionalDouble cell(int gauge, int column) {
    return Arrays.stream(ROWS)
        .filter(r -> (int) r[0] == gauge)
        .mapToDouble(r -> r[column])
        .findFirst();
  }
}
