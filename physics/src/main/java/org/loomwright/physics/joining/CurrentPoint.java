package org.loomwright.physics.joining;

import org.loomwright.physics.Require;

/**
 * One point of a contact's current table. A point of 0 A says where the curve of its wire ends.
 *
 * @param areaMm2 conductor area in mm², above zero; holds for thicker conductors too
 * @param ambientC air at the contact, °C
 * @param currentA most continuous current, A, zero or more
 */
public record CurrentPoint(double areaMm2, double ambientC, double currentA) {
  /** Refuses values that no table can hold. */
  public CurrentPoint {
    Require.positive("conductor area of a current table", areaMm2, "mm²");
    Require.within("ambient of a current table", ambientC, -273.15, 1000, "°C");
    Require.notNegative("current of a current table", currentA, "A");
  }
}
