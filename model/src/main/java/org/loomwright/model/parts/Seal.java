package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/**
 * A wire seal, chosen by outside diameter of the insulation.
 *
 * @param id part number
 * @param name name for people
 * @param insulationLeast smallest diameter it seals
 * @param insulationMost largest diameter it seals
 * @param price price
 * @param source where the values come from
 */
public record Seal(
    String id,
    String name,
    Length insulationLeast,
    Length insulationMost,
    Money price,
    String source) {}
