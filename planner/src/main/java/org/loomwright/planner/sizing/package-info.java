/** Wires, fuses and prices for a lead: the bridge from parts and rules to the sums. */
@NullMarked
package org.loomwright.planner.sizing;

import org.jspecify.annotations.NullMarked;
