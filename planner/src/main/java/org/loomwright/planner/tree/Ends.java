package org.loomwright.planner.tree;

/**
 * Two nodes that must be joined.
 *
 * @param from where the path starts
 * @param to where it ends; may be the same node, then no link is needed
 */
public record Ends(String from, String to) {}
