package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;

/**
 * What is known of one cavity beyond the wires that end in it.
 *
 * @param cavity number as moulded on the housing
 * @param pluggedWhen builds on which a seal plug sits in it; "unknown" makes it a question
 * @param blockedWhen builds on which it is not moulded through or otherwise unusable
 * @param tell how to tell, required when a condition is unknown
 * @param evidence how this is known
 */
public record CavityFact(
    String cavity,
    Optional<Condition> pluggedWhen,
    Optional<Condition> blockedWhen,
    Optional<Tell> tell,
    Optional<Evidence> evidence) {}
