package org.loomwright.physics.wire;

import java.util.Optional;

/**
 * Insulation walls of SAE J1128 cross-linked wire with their outside diameters. All three are rated
 * -40 to 125 °C: read for GXL in a data sheet, from memory for the others.
 */
public enum SaeWall {
  /** Thin wall. */
  TXL("outside diameter of TXL ±0.1 mm from memory", new double[] {2.2, 2.4, 2.8, 3.3, 3.9}),
  /** Medium wall. */
  GXL(
      "outside diameter of GXL read in a wire maker's data sheet",
      new double[] {2.6, 3.0, 3.5, 4.1, 4.8, 5.9}),
  /** Thick wall. */
  SXL("outside diameter of SXL ±0.1 mm from memory", new double[] {2.8, 3.2, 3.6, 4.2, 4.9, 6.1});

  /** Highest continuous conductor temperature, °C. */
  public static final double RATING_C = 125;

  private static final int SMALLEST = 18;

  private final String source;

  /** From 18 AWG in even steps. */
  private final double[] outsideMm;

  SaeWall(String source, double[] outsideMm) {
    this.source = source;
    this.outsideMm = outsideMm;
  }

  /** Outside diameter of an even gauge from 18 on, mm; empty where none is known. */
  public Optional<Double> outsideMm(int gauge) {
    int step = (SMALLEST - gauge) / 2;
    boolean known = gauge <= SMALLEST && gauge % 2 == 0 && step < outsideMm.length;
    return known ? Optional.of(outsideMm[step]) : Optional.empty();
  }

  /** Where the diameters come from. */
  public String source() {
    return source;
  }

  int smallestWire() {
    return SMALLEST;
  }

  int largestWire() {
    return SMALLEST - 2 * (outsideMm.length - 1);
  }
}
