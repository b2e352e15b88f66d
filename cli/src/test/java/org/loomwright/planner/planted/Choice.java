package org.loomwright.planner.planted;

import org.loomwright.planner.proof.planted.TrustsThePlanner;

/** Planted fault: the other half of a cycle of packages. */
public record Choice(TrustsThePlanner proof) {}
