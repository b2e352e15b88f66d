package org.loomwright.model.quantity;

/**
 * American wire gauge numbers.
 *
 * <p>Diameter d = 0.127 mm · 92^((36 − n) / 39) and area A = π d² / 4 of the solid round conductor,
 * for n from −3 (4/0) to 40. Source: ASTM B258.
 */
final class Awg {
  /** 4/0. */
  static final int LARGEST_WIRE = -3;

  static final int SMALLEST_WIRE = 40;

  private Awg() {}

  static double areaMm2(int gauge) {
    double diameterMm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  /** "14 AWG", "1/0 AWG" for 0, "4/0 AWG" for −3. */
  static String label(int gauge) {
    return (gauge > 0 ? Integer.toString(gauge) : (1 - gauge) + "/0") + " AWG";
  }

  /** The gauge whose area is nearest in ratio. */
  static int nearest(double areaMm2) {
    double exact = 36 - 39 * Math.log(Math.sqrt(4 * areaMm2 / Math.PI) / 0.127) / Math.log(92);
    return (int) Math.max(LARGEST_WIRE, Math.min(SMALLEST_WIRE, Math.round(exact)));
  }
}
