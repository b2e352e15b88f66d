package org.loomwright.planner.electrics;

/**
 * A fuse of the kit in its slot.
 *
 * @param ratingA rating, A
 * @param resistance its resistance
 */
public record FittedFuse(double ratingA, Ohms resistance) {}
