/** Short-circuit withstand of conductors and opening times of fuses. */
@NullMarked
package org.loomwright.physics.protection;

import org.jspecify.annotations.NullMarked;
