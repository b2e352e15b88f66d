/** Allowed current and conductor temperature by handbook tables and by heat balance. */
@NullMarked
package org.loomwright.physics.heat;

import org.jspecify.annotations.NullMarked;
