package org.loomwright.model.job;

import java.util.Optional;

/**
 * Who answers for the work.
 *
 * @param by who
 * @param when day, such as 2026-03-04
 * @param words what they add
 */
public record SignOff(String by, String when, Optional<String> words) {}
