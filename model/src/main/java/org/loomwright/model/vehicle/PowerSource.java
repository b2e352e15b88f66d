package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Voltage;

/**
 * Battery and alternator as the fuse blocks see them. What is left out is taken from the shop's
 * rules.
 *
 * @param highest highest voltage at the fuse blocks with the engine running
 * @param strong internal resistance of a full, warm battery: most fault current
 * @param weak internal resistance of an old, cold battery: least fault current
 * @param evidence how this is known
 */
public record PowerSource(
    Optional<Voltage> highest,
    Optional<Resistance> strong,
    Optional<Resistance> weak,
    Optional<Evidence> evidence) {}
