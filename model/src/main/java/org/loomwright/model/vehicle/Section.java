package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Resistance;

/**
 * A group of slots of a fuse block on one bus bar.
 *
 * @param id name used in references, unique in its block
 * @param name name for people
 * @param feed supply kind by DIN 72552, e.g. "30" or "15"
 * @param fedWhen builds on which it is fed; "unknown" makes it a question
 * @param tell how to tell, required when unknown
 * @param limit most current it may carry
 * @param baseLoad most current that factory loads draw from it at once
 * @param feedResistance resistance of the cable and its joints from the battery to the bus bar
 * @param fuse rating of the fuse between battery and bus bar
 * @param fuseForm form of that fuse, as slots name it
 * @param evidence how this is known
 */
public record Section(
    String id,
    String name,
    String feed,
    Condition fedWhen,
    Optional<Tell> tell,
    Current limit,
    Current baseLoad,
    Optional<Resistance> feedResistance,
    Optional<Current> fuse,
    Optional<String> fuseForm,
    Optional<Evidence> evidence) {}
