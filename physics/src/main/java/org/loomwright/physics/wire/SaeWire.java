package org.loomwright.physics.wire;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.loomwright.physics.Require;

/**
 * Wire by SAE gauge. A gauge number of SAE J1128 / J1127 stands for a smaller conductor than the
 * same AWG number: 1 to 13 % less copper. Smallest areas were read in a cable catalogue that prints
 * both series; that they are those of SAE J1128 / J1127 is from memory.
 *
 * <p>Resistance: r20 = 1.02 · 0.017241 / A, ohm/m with A in mm². The 2 % are the extra length of
 * bunched strands (ASTM B174, from memory).
 */
public final class SaeWire {
  /** Source of the areas. */
  public static final String AREA_SOURCE =
      "smallest area of SAE gauge cable, read in a cable catalogue; SAE J1128 and J1127 (that"
          + " identity from memory)";

  /** Extra length of strands over the length of the wire, as a factor (from memory). */
  public static final double LAY = 1.02;

  /** Square millimetres of a circular mil: π/4 · 0.0254². */
  public static final double MM2_PER_CMIL = Math.PI / 4 * 0.0254 * 0.0254;

  /** Stranded over solid diameter, as for the AWG series here. */
  private static final double STRANDED_OVER_SOLID = 1.15;

  /** Gauge (0, -1, -2, -3 for 1/0 to 4/0) and smallest area in circular mils. */
  private static final int[][] CMIL = {
    {18, 1537},
    {16, 2336},
    {14, 3702},
    {12, 5833},
    {10, 9343},
    {8, 14_810},
    {6, 24_538},
    {4, 37_360},
    {2, 62_450},
    {1, 77_790},
    {0, 98_980},
    {-1, 125_100},
    {-2, 158_600},
    {-3, 205_500},
  };

  private SaeWire() {}

  /** Gauges with a known area, smallest wire first. */
  public static List<Integer> gauges() {
    return Arrays.stream(CMIL).map(r -> r[0]).toList();
  }

  /**
   * Smallest conductor area of a gauge, mm².
   *
   * @param gauge 18 to 8 even, 6, 4, 2, 1, and 0 to -3 for 1/0 to 4/0
   * @throws UnknownConductorException for any other
   */
  public static double areaMm2(int gauge) {
    for (int[] row : CMIL) {
      if (row[0] == gauge) {
        return row[1] * MM2_PER_CMIL;
      }
    }
    throw new UnknownConductorException(
        label(gauge), "the SAE gauges with a known smallest area", List.of(label(nearest(gauge))));
  }

  /**
   * A wire of SAE J1128 with cross-linked insulation.
   *
   * @param gauge 18 to 8, even
   * @param wall insulation wall
   * @throws UnknownConductorException where area or outside diameter is not known
   */
  public static Conductor find(int gauge, SaeWall wall) {
    double area = areaMm2(gauge);
    Optional<Double> outsideMm = wall.outsideMm(gauge);
    if (outsideMm.isEmpty()) {
      throw new UnknownConductorException(
          label(gauge) + " " + wall,
          "the outside diameters known for SAE J1128",
          List.of(label(wall.smallestWire()) + " to " + label(wall.largestWire())));
    }
    return new Conductor(
        label(gauge) + " " + wall,
        area,
        LAY * Copper.RESISTIVITY_OHM_MM2_PER_M / area,
        STRANDED_OVER_SOLID * Math.sqrt(4 * area / Math.PI),
        outsideMm.get(),
        AREA_SOURCE + "; " + wall.source());
  }

  private static int nearest(int gauge) {
    int best = CMIL[0][0];
    for (int[] row : CMIL) {
      if (Math.abs(row[0] - gauge) < Math.abs(best - gauge)) {
        best = row[0];
      }
    }
    return best;
  }

  private static String label(int gauge) {
    return gauge > 0 ? "SAE " + Require.text(gauge) : "SAE " + (1 - gauge) + "/0";
  }
}
