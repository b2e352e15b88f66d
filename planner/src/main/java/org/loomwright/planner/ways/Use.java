package org.loomwright.planner.ways;

/**
 * Capacity a way takes up.
 *
 * @param resource name of what is used, equal for all who use it
 * @param amount how much, in the resource's own unit
 * @param limit how much there is for added leads together
 * @param words the resource in words
 */
public record Use(String resource, double amount, double limit, String words) {}
