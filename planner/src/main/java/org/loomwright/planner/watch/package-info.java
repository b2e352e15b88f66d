/** How far planning is, and how it is stopped. */
@NullMarked
package org.loomwright.planner.watch;

import org.jspecify.annotations.NullMarked;
