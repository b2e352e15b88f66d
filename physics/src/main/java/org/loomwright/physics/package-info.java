/** Sums with no idea of vehicles: conductors, ampacity, heat, fuses. */
@NullMarked
package org.loomwright.physics;

import org.jspecify.annotations.NullMarked;
