package org.loomwright.physics.wire;

import org.loomwright.physics.Require;

/**
 * How a conductor is made up of round strands. Catalogues print this beside a size; the strands,
 * not the name of the size, tell how much copper there is.
 *
 * @param strands number of strands, 1 to 10 000
 * @param strandMm diameter of one strand, mm, 0.01 to 20
 */
public record Stranding(int strands, double strandMm) {
  /** Checks the ranges. */
  public Stranding {
    Require.within("number of strands", strands, 1, 10_000, "strands");
    Require.within("strand diameter", strandMm, 0.01, 20, "mm");
  }

  /** Strands of an AWG number, e.g. 19 strands of 29 AWG. */
  public static Stranding ofAwg(int strands, int strandGauge) {
    return new Stranding(strands, Conductor.awgSolidDiameterMm(strandGauge));
  }

  /** Copper area, mm²: n · π/4 · d². */
  public double areaMm2() {
    return strands * Math.PI / 4 * strandMm * strandMm;
  }

  /** Resistance at 20 °C, ohm/m: 0.017241 / A, no allowance for the lay of the strands. */
  public double ohmPerM20C() {
    return Copper.RESISTIVITY_OHM_MM2_PER_M / areaMm2();
  }
}
