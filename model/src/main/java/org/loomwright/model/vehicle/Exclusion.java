package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;

/**
 * Builds that do not exist.
 *
 * @param exclude condition of the builds ruled out
 * @param reason why the maker never built them
 * @param evidence how this is known
 */
public record Exclusion(Condition exclude, String reason, Optional<Evidence> evidence) {}
