/** Benchmarks of the search for the wires, which lies within this package of the planner. */
@NullMarked
package org.loomwright.planner.kit;

import org.jspecify.annotations.NullMarked;
