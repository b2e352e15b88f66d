/** Which kits a change of a vehicle touches, and how. */
@NullMarked
package org.loomwright.planner.impact;

import org.jspecify.annotations.NullMarked;
