package org.loomwright.physics.heat;

import org.loomwright.physics.Require;

/**
 * One layer round a wire or bundle: an air gap (none where it lies tight) and a wall outside it.
 *
 * <p>Wall: ΔT = q ln(Do/Di) / (2πk). Gap: conduction through still air and radiation between grey
 * concentric surfaces of emissivity 0.75; convection in the gap is left out and the bundle is taken
 * to touch the wall nowhere, both cautious.
 *
 * @param name in words
 * @param gapMm mean radial gap of air under the wall, mm, 0 to 50
 * @param wallMm thickness of the wall, mm, 0.01 to 20
 * @param wallWPerMK conductivity of the wall, W/(m·K), 0.02 to 10
 * @param source where the figures come from
 */
public record Covering(String name, double gapMm, double wallMm, double wallWPerMK, String source) {
  /** PVC jacket, tapes: 6.0 K·m/W. */
  private static final double TAPE_W_PER_MK = 1 / 6.0;

  /** Polypropylene, 5.9 K·m/W. */
  private static final double POLYPROPYLENE_W_PER_MK = 1 / 5.9;

  /** Polyethylene, 3.5 K·m/W. */
  private static final double POLYETHYLENE_W_PER_MK = 1 / 3.5;

  /** Textile with air between the threads (from memory). */
  private static final double TEXTILE_W_PER_MK = 0.08;

  /** Checks the ranges. */
  public Covering {
    Require.within("air gap of " + name, gapMm, 0, 50, "mm");
    Require.within("wall of " + name, wallMm, 0.01, 20, "mm");
    Require.within("conductivity of " + name, wallWPerMK, 0.02, 10, "W/(m K)");
  }

  /** PVC tape of 0.13 mm, half lapped, so two layers everywhere. */
  public static Covering pvcTape() {
    return new Covering(
        "PVC tape, half lapped",
        0,
        0.26,
        TAPE_W_PER_MK,
        "IEC 60287-2-1 (6.0 K m/W); thickness from memory");
  }

  /** Woven cloth tape of 0.30 mm, half lapped. */
  public static Covering clothTape() {
    return new Covering("cloth tape, half lapped", 0, 0.60, TEXTILE_W_PER_MK, "from memory");
  }

  /** Braided textile or plastic sleeve, tight, 0.8 mm. */
  public static Covering braidedSleeve() {
    return new Covering("braided sleeve", 0, 0.80, TEXTILE_W_PER_MK, "from memory");
  }

  /** Shrink tube of cross-linked polyethylene, tight. */
  public static Covering shrinkTube(double wallMm) {
    return new Covering(
        "shrink tube", 0, wallMm, POLYETHYLENE_W_PER_MK, "IEC 60287-2-1 (3.5 K m/W)");
  }

  /**
   * Corrugated polypropylene conduit of 0.5 mm wall (from memory), with the air between it and the
   * bundle.
   *
   * @param gapMm (inner diameter - bundle diameter) / 2; to stay cautious take the mean inner
   *     diameter of the corrugation
   */
  public static Covering conduit(double gapMm) {
    return new Covering(
        "corrugated conduit",
        gapMm,
        0.5,
        POLYPROPYLENE_W_PER_MK,
        "polypropylene 5.9 K m/W (published range 0.17 to 0.22 W/(m K)); wall from memory");
  }

  /** What the layer adds to the diameter, mm. */
  double addedDiameterMm() {
    return 2 * (gapMm + wallMm);
  }

  /**
   * Temperature just inside the layer, °C.
   *
   * @param innerDiameterMm of what the layer lies round, mm
   * @param outsideC temperature outside the wall, °C
   * @param heatWPerM heat flowing outward, W/m, not below zero
   */
  double insideC(double innerDiameterMm, double outsideC, double heatWPerM) {
    double wallInnerMm = innerDiameterMm + 2 * gapMm;
    double wallC =
        outsideC
            + heatWPerM
                * Math.log((wallInnerMm + 2 * wallMm) / wallInnerMm)
                / (2 * Math.PI * wallWPerMK);
    return gapMm == 0 ? wallC : AirGap.innerC(innerDiameterMm, wallInnerMm, wallC, heatWPerM);
  }
}
