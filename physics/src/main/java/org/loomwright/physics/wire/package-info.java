/** Copper conductors: sizes, resistance at temperature, voltage drop. */
@NullMarked
package org.loomwright.physics.wire;

import org.jspecify.annotations.NullMarked;
