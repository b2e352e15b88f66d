package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Current;

/**
 * One fuse slot.
 *
 * @param id name used in references, unique in its block
 * @param section section that feeds it
 * @param form fuse form it takes, as named in the parts, e.g. "blade"
 * @param maxRating largest fuse it may hold
 * @param metalWhen builds on which both blades' metal is fitted; "unknown" makes it a question
 * @param tell how to tell, required when unknown
 * @param fedBlade words for the blade on the bus bar, e.g. "the upper one"
 * @param loadBlade words for the blade an added lead lands on
 * @param terminal part that fits the load blade's cavity
 * @param evidence how this is known
 */
public record Slot(
    String id,
    String section,
    String form,
    Current maxRating,
    Condition metalWhen,
    Optional<Tell> tell,
    String fedBlade,
    String loadBlade,
    String terminal,
    Optional<Evidence> evidence) {}
