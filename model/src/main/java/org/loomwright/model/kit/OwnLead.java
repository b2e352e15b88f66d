package org.loomwright.model.kit;

import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.WireSize;

/**
 * A lead that the user adds beside those the planner derives from needs: a spare wire, a link
 * between two plugs of the equipment, a lead to an empty cavity. It carries nothing unless the
 * equipment puts it there; what the equipment puts there the equipment has to protect.
 *
 * @param id name used in references and in the lead list
 * @param name what it is for, printed on its label
 * @param from one end
 * @param to the other end, at another spot
 * @param size conductor; absent means the smallest on file that carries the current
 * @param colour colour; absent means one that tells it apart
 * @param current most current it may ever carry
 * @param when builds on which it is used, it is parked on the others; absent means all
 * @param reason why it is wanted, for the next reader
 */
public record OwnLead(
    String id,
    String name,
    OwnEnd from,
    OwnEnd to,
    Optional<WireSize> size,
    Optional<Colour> colour,
    Current current,
    Optional<Condition> when,
    String reason) {}
