package org.loomwright.planner.guide;

import org.loomwright.model.vehicle.Trait;
import org.loomwright.planner.builds.Region;

/**
 * A trait to be asked for.
 *
 * @param trait trait
 * @param on builds on which it is asked; decided by the answers before
 */
record Question(Trait trait, Region on) {}
