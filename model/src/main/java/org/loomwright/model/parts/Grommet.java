package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/**
 * A grommet that protects a bundle in a hole.
 *
 * @param id part number
 * @param name name for people
 * @param holeLeast smallest hole it sits in
 * @param holeMost largest hole it sits in
 * @param bundleLeast thinnest bundle it still holds
 * @param bundleMost thickest bundle it takes
 * @param price price
 * @param source where the values come from
 */
public record Grommet(
    String id,
    String name,
    Length holeLeast,
    Length holeMost,
    Length bundleLeast,
    Length bundleMost,
    Money price,
    String source) {}
