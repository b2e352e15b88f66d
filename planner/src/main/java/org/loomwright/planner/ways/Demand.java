package org.loomwright.planner.ways;

import org.loomwright.planner.builds.Region;

/**
 * One thing a way needs of the vehicle.
 *
 * @param holds builds on which it is so
 * @param otherwise what to say of builds on which it is not, e.g. "section B is dead"
 */
public record Demand(Region holds, String otherwise) {}
