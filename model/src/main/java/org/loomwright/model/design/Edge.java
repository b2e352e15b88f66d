package org.loomwright.model.design;

import org.loomwright.model.condition.Condition;

/**
 * The way from one step to a next.
 *
 * @param from step id
 * @param to step id
 * @param when builds that go this way; decided by answers given before
 * @param words the condition in words, empty when always
 */
public record Edge(String from, String to, Condition when, String words) {}
