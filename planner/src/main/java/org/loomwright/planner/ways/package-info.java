/** Ways to meet a need, derived from the vehicle's facts. */
@NullMarked
package org.loomwright.planner.ways;

import org.jspecify.annotations.NullMarked;
