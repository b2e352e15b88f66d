package org.loomwright.planner.sizing;

import java.util.Comparator;
import java.util.List;
import org.loomwright.physics.protection.Fuse;

/**
 * What a wire has to bear.
 *
 * @param ground whether it is a ground; its fuses are then those of the feeds it returns
 * @param load what it carries
 * @param fuses fuses that protect it, or that protect the feeds whose fault current it returns: one
 *     of these at a time; none for a lead that no feed is tied to
 * @param lengthMm its length
 * @param restMm length of the rest of the loop in the same size, for the fault current
 * @param ambientC highest ambient on its way
 * @param wires added wires in its thickest bundle, itself included
 * @param leastAreaMm2 mechanical minimum, or what a standard asks for
 * @param dropV most voltage it may lose
 * @param supplyV nominal supply
 */
public record WireNeed(
    boolean ground,
    Load load,
    List<FuseBefore> fuses,
    double lengthMm,
    double restMm,
    double ambientC,
    int wires,
    double leastAreaMm2,
    double dropV,
    double supplyV) {
  /** Copies the fuses. */
  public WireNeed {
    fuses = List.copyOf(fuses);
  }

  /** Whether a fuse is before it. */
  public boolean isFused() {
    return !fuses.isEmpty();
  }

  /**
   * The largest fuse before it.
   *
   * @throws java.util.NoSuchElementException when there is none
   */
  public Fuse fuse() {
    return fuses.stream()
        .map(FuseBefore::fuse)
        .max(Comparator.comparingDouble(Fuse::ratingA))
        .orElseThrow();
  }
}
