package org.loomwright.planner.tree;

/** Two numbered nodes that must be joined. */
record Pair(int from, int to) {}
