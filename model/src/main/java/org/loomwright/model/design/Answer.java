package org.loomwright.model.design;

/**
 * One possible answer to a question.
 *
 * @param value trait value
 * @param words the value as the owner would say it
 * @param expect what is seen, read or heard then
 */
public record Answer(String value, String words, String expect) {}
