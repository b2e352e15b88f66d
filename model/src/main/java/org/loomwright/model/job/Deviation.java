package org.loomwright.model.job;

import java.util.Optional;

/**
 * Something done or found otherwise than the guide says.
 *
 * @param step id of the step; absent when it concerns the whole job
 * @param was what was different
 * @param why the reason, or what was done about it; absent while nobody has said
 * @param finding the finding that was made of it
 */
public record Deviation(
    Optional<String> step, String was, Optional<String> why, Optional<String> finding) {}
