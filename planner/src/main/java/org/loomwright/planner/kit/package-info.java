/** From chosen ways to leads, sizes, fuses, part numbers and checks. */
@NullMarked
package org.loomwright.planner.kit;

import org.jspecify.annotations.NullMarked;
