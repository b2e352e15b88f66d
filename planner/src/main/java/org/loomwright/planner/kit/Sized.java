package org.loomwright.planner.kit;

import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.sizing.WireNeed;

/**
 * A strand with its wire.
 *
 * @param strand strand
 * @param lead the lead as data
 * @param wire its wire
 * @param need what the wire was chosen for
 * @param passes whether the wire passes every check; the largest that fits the ends is taken when
 *     none does, and the checks then fail by name
 */
record Sized(Strand strand, Lead lead, Wire wire, WireNeed need, boolean passes) {}
