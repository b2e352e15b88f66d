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
 */
record Sized(Strand strand, Lead lead, Wire wire, WireNeed need) {}
