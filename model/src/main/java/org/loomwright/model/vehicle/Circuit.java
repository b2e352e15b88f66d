package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.WireSize;

/**
 * A factory circuit: one wire, or wires joined at the factory, from where its current comes from to
 * where it goes. A circuit that no build of this vehicle has ({@code presentWhen} "never") tells
 * what the better-equipped build does: where the planner should land first.
 *
 * @param id name used in references
 * @param name name for people
 * @param kind what it carries
 * @param feed supply kind by DIN 72552 or signal name; required for supplies and signals
 * @param from source end: a slot, a unit, or for grounds the stud
 * @param to consumer ends
 * @param wire size of its wire
 * @param length length from source to the farthest end
 * @param colour colour
 * @param colourAsSeen the maker's own colour code
 * @param presentWhen builds that have it; "unknown" makes it a question
 * @param tell how to tell, required when unknown
 * @param fuse rating that protects it; required for a supply that something may be spliced into
 * @param fuseForm form of that fuse, as slots name it
 * @param load most current already on it; required where something may be spliced into it
 * @param reachedAt places where it can be spliced into
 * @param restraint whether it belongs to airbags or pretensioners
 * @param evidence how this is known
 */
public record Circuit(
    String id,
    String name,
    CircuitKind kind,
    Optional<String> feed,
    Spot from,
    List<Spot> to,
    WireSize wire,
    Optional<Length> length,
    Colour colour,
    Optional<String> colourAsSeen,
    Condition presentWhen,
    Optional<Tell> tell,
    Optional<Current> fuse,
    Optional<String> fuseForm,
    Optional<Current> load,
    List<String> reachedAt,
    boolean restraint,
    Optional<Evidence> evidence) {
  public Circuit {
    to = List.copyOf(to);
    reachedAt = List.copyOf(reachedAt);
  }
}
