package org.loomwright.model.parts;

import java.util.Optional;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Resistance;

/**
 * A fuse.
 *
 * @param id part number
 * @param name name for people
 * @param form fuse form, as slots name it
 * @param rating rated current
 * @param resistance resistance at rated current
 * @param colour colour of its body
 * @param price price
 * @param source where the values come from
 */
public record Fuse(
    String id,
    String name,
    String form,
    Current rating,
    Optional<Resistance> resistance,
    String colour,
    Money price,
    String source) {}
