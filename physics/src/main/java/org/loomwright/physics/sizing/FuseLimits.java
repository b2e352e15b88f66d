package org.loomwright.physics.sizing;

import org.loomwright.physics.Require;
import org.loomwright.physics.protection.LoadingLimit;
import org.loomwright.physics.protection.Withstand;

/**
 * Limits for the choice of a fuse, all of them the shop's to change.
 *
 * @param loading steady load over fuse rating
 * @param carryFactor the wire must carry this multiple of the fuse rating for good
 * @param maxDropPercent drop there and back at steady load, percent of the supply
 * @param sourceOhm resistance of battery and cable up to the fuse, ohm; it limits the largest fault
 *     current and lowers the smallest
 * @param openingTimeS a fault at the end of the line must open the fuse within this time, s, at
 *     most 5 s
 */
public record FuseLimits(
    LoadingLimit loading,
    double carryFactor,
    double maxDropPercent,
    double sourceOhm,
    double openingTimeS) {
  /** Source of the carry factor. */
  public static final String CARRY_SOURCE =
      "a published upfit guide (wire for 135 % of the fuse); stricter than 125 % of others, and the"
          + " multiple at which a blade fuse may take 600 s to open";

  /** Source of the drop limit. */
  public static final String DROP_SOURCE =
      "a published vehicle body specification: at most 10 % of system voltage; 3 % is common"
          + " practice for critical loads";

  /** Source of the source resistance. */
  public static final String SOURCE_OHM_SOURCE =
      "20 mohm for a tired starter battery and its cable (from memory)";

  /**
   * 70 % loading; wire for 135 % of the fuse, the stricter of the published 125 and 135 %; 10 %
   * drop; 20 mohm source; 5 s, the longest time for which the withstand sum holds.
   */
  public static final FuseLimits DEFAULT =
      new FuseLimits(LoadingLimit.DEFAULT, 1.35, 10, 0.020, Withstand.LONGEST_S);

  /** Checks the ranges. */
  public FuseLimits {
    Require.within("loading share", loading.share(), 0.01, 1, "of the rating");
    Require.positive("carry factor", carryFactor, "of the rating");
    Require.positive("largest drop", maxDropPercent, "%");
    Require.positive("source resistance", sourceOhm, "ohm");
    Require.within("opening time", openingTimeS, 1e-3, Withstand.LONGEST_S, "s");
  }
}
