/** From cases and leads to the graph of steps. */
@NullMarked
package org.loomwright.planner.guide;

import org.jspecify.annotations.NullMarked;
