package org.loomwright.physics.packing;

import org.loomwright.physics.Require;

/**
 * A circle in the plane of a cross-section.
 *
 * @param xMm centre, mm
 * @param yMm centre, mm
 * @param radiusMm radius, mm, above zero
 */
public record Circle(double xMm, double yMm, double radiusMm) {
  /** Refuses a circle without a place or a size. */
  public Circle {
    Require.within("centre of a circle", xMm, -Double.MAX_VALUE, Double.MAX_VALUE, "mm");
    Require.within("centre of a circle", yMm, -Double.MAX_VALUE, Double.MAX_VALUE, "mm");
    Require.positive("radius of a circle", radiusMm, "mm");
  }
}
