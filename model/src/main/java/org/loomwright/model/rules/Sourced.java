package org.loomwright.model.rules;

/**
 * A value with where it comes from.
 *
 * @param value the value
 * @param source publication, or "common practice", or "from memory"
 */
public record Sourced<T>(T value, String source) {}
