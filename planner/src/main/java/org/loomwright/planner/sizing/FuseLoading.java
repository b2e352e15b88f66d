package org.loomwright.planner.sizing;

import org.loomwright.model.rules.Rules;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.LoadingByPlace;
import org.loomwright.physics.protection.LoadingLimit;

/**
 * How far a fuse may be loaded for good: the shop's rule or the strictest published limit for its
 * place and ambient, whichever is stricter.
 *
 * @param shop the shop's rule
 */
public record FuseLoading(LoadingLimit shop) {
  /** The loading of a shop. */
  public static FuseLoading of(Rules rules) {
    return new FuseLoading(
        new LoadingLimit(
            rules.fuseLoading().value().fraction(),
            "the shop's rule for added circuits",
            rules.fuseLoading().source()));
  }

  /**
   * The limit for a fuse, saying whose it is.
   *
   * @throws org.loomwright.physics.SumException for an ambient outside the range of the re-rating
   */
  public LoadingLimit at(FuseFamily family, FuseSpot spot) {
    LoadingLimit published = LoadingByPlace.of(family, spot.place(), spot.ambientC()).strictest();
    return shop.share() <= published.share() ? shop : published;
  }
}
