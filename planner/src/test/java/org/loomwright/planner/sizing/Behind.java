package org.loomwright.planner.sizing;

import java.util.List;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FusePlace;

/** Wires behind fuses, for tests. */
final class Behind {
  /** Cabin at 40 °C, where published loading limits start from. */
  static final FuseSpot COOL = new FuseSpot(FusePlace.CABIN, 40);

  /** 12 V, a feed of 12 mΩ to the fuse, 20 mΩ of fuse, contacts, ground and body. */
  static final FaultLoop USUAL = new FaultLoop(11.8, 14.8, 0.017, 0.035, 0.02);

  private Behind() {}

  static FuseBefore blade(double ratingA, FuseSpot spot, FaultLoop loop) {
    return new FuseBefore(
        new Fuse(FuseFamily.REGULAR_BLADE, ratingA), false, true, spot, loop, List.of());
  }

  /** A lead alone at 50 °C, 2 m there and back, with no drop to keep. */
  static WireNeed need(Load load, FuseBefore... fuses) {
    return need(load, 2000, fuses);
  }

  static WireNeed need(Load load, double lengthMm, FuseBefore... fuses) {
    return new WireNeed(
        false, load, List.of(fuses), lengthMm, lengthMm, 50, 1, 0, Double.POSITIVE_INFINITY, 12);
  }
}
