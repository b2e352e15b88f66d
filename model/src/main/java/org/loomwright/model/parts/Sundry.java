package org.loomwright.model.parts;

import org.loomwright.model.quantity.Money;

/**
 * Anything counted by the piece: cavity plugs, end caps, labels, ties.
 *
 * @param id part number
 * @param name name for people
 * @param use what it is used as
 * @param price price
 * @param source where the values come from
 */
public record Sundry(String id, String name, SundryUse use, Money price, String source) {}
