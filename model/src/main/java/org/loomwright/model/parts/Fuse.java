package org.loomwright.model.parts;

import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Money;

/**
 * A fuse.
 *
 * @param id part number
 * @param name name for people
 * @param form fuse form, as slots name it
 * @param rating rated current
 * @param colour colour of its body
 * @param price price
 * @param source where the values come from
 */
public record Fuse(
    String id,
    String name,
    String form,
    Current rating,
    String colour,
    Money price,
    String source) {}
