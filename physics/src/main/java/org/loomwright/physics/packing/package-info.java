/** Circles of given sizes in the smallest circle: the cross-section of a bundle of wires. */
@NullMarked
package org.loomwright.physics.packing;

import org.jspecify.annotations.NullMarked;
