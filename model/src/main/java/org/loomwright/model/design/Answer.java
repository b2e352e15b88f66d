package org.loomwright.model.design;

import java.util.Optional;

/**
 * One possible answer to a question.
 *
 * @param value trait value
 * @param words the value as the owner would say it
 * @param expect what is seen, read or heard then
 * @param band where the measured number lies then; absent where nothing is measured, or nothing
 *     more exact than the words is known
 */
public record Answer(String value, String words, String expect, Optional<Band> band) {}
