package org.loomwright.physics.sizing;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Smallest conductor behind a fuse by a published table. It is an upfitting rule of one vehicle
 * maker for added circuits at up to 40 °C ambient, and stricter than the heat of a single wire for
 * small fuses; longer runs need more, which the voltage drop decides.
 */
public final class LeastSection {
  /** Where the table comes from. */
  public static final String SOURCE =
      "a vehicle maker's body-builder table of fuse and smallest section at 40 °C";

  private static final TreeMap<Double, Double> BY_FUSE_A =
      new TreeMap<>(
          Map.of(
              5.0, 0.5, 7.5, 0.5, 10.0, 0.85, 15.0, 1.25, 20.0, 2.0, 25.0, 3.0, 30.0, 5.0, 40.0,
              8.0, 50.0, 10.0, 60.0, 15.0));

  private LeastSection() {}

  /**
   * Smallest section, mm², for a fuse rating; that of the next larger rating between entries, empty
   * above 60 A, where the table ends.
   */
  public static OptionalDouble areaMm2(double fuseA) {
    Map.Entry<Double, Double> entry = BY_FUSE_A.ceilingEntry(fuseA - 1e-9);
    return entry == null ? OptionalDouble.empty() : OptionalDouble.of(entry.getValue());
  }
}
