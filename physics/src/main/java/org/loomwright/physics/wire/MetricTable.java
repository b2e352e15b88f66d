package org.loomwright.physics.wire;

import java.util.Arrays;
import java.util.List;
import org.loomwright.physics.Require;

/**
 * Metric copper cables, thin wall. All values from memory of ISO 6722-1: the resistance column is
 * repeated by many cable makers' catalogues; diameters agree within 0.1 mm with a cable maker's
 * catalogue up to 6 mm² and are less certain above that.
 */
final class MetricTable {
  static final String SOURCE =
      "ISO 6722-1 copper, thin wall: largest resistance at 20 °C and largest diameters (from memory)";

  /** Relative slack when a size is looked up by its area. */
  private static final double SAME_AREA = 1e-3;

  /** Nominal area mm², largest resistance mOhm/m at 20 °C, conductor and outside diameter mm. */
  private static final double[][] ROWS = {
    {0.13, 136, 0.55, 1.05},
    {0.22, 84.8, 0.70, 1.20},
    {0.35, 54.4, 0.90, 1.40},
    {0.5, 37.1, 1.10, 1.60},
    {0.75, 24.7, 1.30, 1.90},
    {1, 18.5, 1.50, 2.10},
    {1.5, 12.7, 1.80, 2.40},
    {2, 9.42, 2.00, 2.80},
    {2.5, 7.60, 2.20, 3.00},
    {3, 6.15, 2.40, 3.40},
    {4, 4.71, 2.80, 3.70},
    {6, 3.14, 3.40, 4.30},
    {8, 2.38, 4.30, 5.00},
    {10, 1.82, 4.50, 6.00},
    {12, 1.52, 5.40, 6.50},
    {16, 1.16, 5.80, 7.20},
    {20, 0.955, 6.90, 7.80},
    {25, 0.743, 7.20, 8.70},
    {35, 0.527, 8.50, 10.4},
    {50, 0.368, 10.5, 12.2},
    {70, 0.259, 12.5, 14.4},
    {95, 0.196, 14.8, 16.7},
    {120, 0.153, 16.5, 18.7},
  };

  /** All sizes, smallest first. */
  static final List<Conductor> SIZES =
      Arrays.stream(ROWS)
          .map(
              r ->
                  new Conductor(Require.text(r[0]) + " mm²", r[0], r[1] / 1000, r[2], r[3], SOURCE))
          .toList();

  private MetricTable() {}

  static Conductor find(double areaMm2) {
    for (Conductor c : SIZES) {
      if (Math.abs(c.areaMm2() - areaMm2) <= SAME_AREA * c.areaMm2()) {
        return c;
      }
    }
    List<String> smaller =
        SIZES.stream().filter(c -> c.areaMm2() < areaMm2).map(Conductor::label).toList();
    List<String> nearest =
        smaller.isEmpty()
            ? List.of(SIZES.get(0).label())
            : smaller.size() == SIZES.size()
                ? List.of(smaller.get(smaller.size() - 1))
                : List.of(smaller.get(smaller.size() - 1), SIZES.get(smaller.size()).label());
    throw new UnknownConductorException(
        Require.text(areaMm2) + " mm²", "the ISO 6722-1 table", nearest);
  }
}
