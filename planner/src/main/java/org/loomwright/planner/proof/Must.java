package org.loomwright.planner.proof;

/**
 * Something that must be so on a build for an act to be right.
 *
 * @param so builds on which it is so
 * @param otherwise what is the matter on the other builds
 */
record Must(Region so, String otherwise) {}
