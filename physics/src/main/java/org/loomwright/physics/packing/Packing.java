package org.loomwright.physics.packing;

import java.util.List;

/**
 * Circles that lie side by side in a circle round the origin.
 *
 * @param circles the circles, in the order in which their radii were given
 * @param radiusMm radius of the circle round them, mm; its centre is the origin
 * @param lowerBoundMm no circle round the same circles can have a smaller radius than this, mm
 */
public record Packing(List<Circle> circles, double radiusMm, double lowerBoundMm) {
  /** Copies the circles. */
  public Packing {
    circles = List.copyOf(circles);
  }

  /** Share of the round area that the circles fill, 0 to 1. */
  public double fill() {
    return circles.stream().mapToDouble(c -> c.radiusMm() * c.radiusMm()).sum()
        / (radiusMm * radiusMm);
  }
}
