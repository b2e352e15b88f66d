package org.loomwright.physics.wire;

import java.util.Arrays;
import java.util.List;
import org.loomwright.physics.Require;

/**
 * Fine-stranded copper conductors of IEC 60228 class 5, 0.5 to 300 mm², as sold by the metre for
 * panels and battery cables.
 *
 * <p>The standard bounds the resistance, not the area: the nominal area is a name, and the largest
 * resistance at 20 °C is the figure to reckon with. Resistances were read in a published table;
 * conductor diameters (IEC 60228 annex C, largest) and insulation walls (single-core PVC cable of
 * EN 50525-2-31) are from memory.
 */
public final class Class5 {
  /** Source of all figures. */
  public static final String SOURCE =
      "IEC 60228 class 5, largest resistance at 20 °C; conductor diameter and PVC wall from memory";

  /** Relative slack when a size is looked up by its area. */
  private static final double SAME_AREA = 1e-3;

  /** Area mm², plain and tinned ohm/km at 20 °C, conductor diameter mm, insulation wall mm. */
  private static final double[][] ROWS = {
    {0.5, 39.0, 40.1, 1.1, 0.6},
    {0.75, 26.0, 26.7, 1.3, 0.6},
    {1, 19.5, 20.0, 1.5, 0.6},
    {1.5, 13.3, 13.7, 1.8, 0.7},
    {2.5, 7.98, 8.21, 2.4, 0.8},
    {4, 4.95, 5.09, 3.0, 0.8},
    {6, 3.30, 3.39, 3.9, 0.8},
    {10, 1.91, 1.95, 5.1, 1.0},
    {16, 1.21, 1.24, 6.3, 1.0},
    {25, 0.780, 0.795, 7.8, 1.2},
    {35, 0.554, 0.565, 9.2, 1.2},
    {50, 0.386, 0.393, 11.0, 1.4},
    {70, 0.272, 0.277, 13.1, 1.4},
    {95, 0.206, 0.210, 15.1, 1.6},
    {120, 0.161, 0.164, 17.0, 1.6},
    {150, 0.129, 0.132, 19.0, 1.8},
    {185, 0.106, 0.108, 21.0, 2.0},
    {240, 0.0801, 0.0817, 24.0, 2.2},
    {300, 0.0641, 0.0654, 27.0, 2.4},
  };

  private static final List<Conductor> PLAIN = sizes(false);
  private static final List<Conductor> TINNED = sizes(true);

  private Class5() {}

  /** All sizes with plain strands, smallest first. */
  public static List<Conductor> plain() {
    return PLAIN;
  }

  /** All sizes with tinned strands, smallest first; 2 to 3 % more resistance than plain. */
  public static List<Conductor> tinned() {
    return TINNED;
  }

  /**
   * A size with plain strands.
   *
   * @param areaMm2 nominal area, one of the table's
   * @throws UnknownConductorException naming the nearest sizes
   */
  public static Conductor plain(double areaMm2) {
    return find(PLAIN, areaMm2);
  }

  /**
   * A size with tinned strands.
   *
   * @param areaMm2 nominal area, one of the table's
   * @throws UnknownConductorException naming the nearest sizes
   */
  public static Conductor tinned(double areaMm2) {
    return find(TINNED, areaMm2);
  }

  private static List<Conductor> sizes(boolean tinned) {
    return Arrays.stream(ROWS)
        .map(
            r ->
                new Conductor(
                    Require.text(r[0]) + " mm² class 5" + (tinned ? " tinned" : ""),
                    r[0],
                    r[tinned ? 2 : 1] / 1000,
                    r[3],
                    r[3] + 2 * r[4],
                    SOURCE))
        .toList();
  }

  private static Conductor find(List<Conductor> sizes, double areaMm2) {
    for (Conductor c : sizes) {
      if (Math.abs(c.areaMm2() - areaMm2) <= SAME_AREA * c.areaMm2()) {
        return c;
      }
    }
    throw new UnknownConductorException(
        Require.text(areaMm2) + " mm²",
        "the IEC 60228 class 5 table",
        NearestSizes.of(sizes, areaMm2));
  }
}
