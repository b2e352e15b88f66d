package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/**
 * A clip that holds a bundle to the body.
 *
 * @param id part number
 * @param name name for people
 * @param bundleLeast thinnest bundle it holds, covering included
 * @param bundleMost thickest bundle it takes, covering included
 * @param price price
 * @param source where the values come from
 */
public record Clip(
    String id, String name, Length bundleLeast, Length bundleMost, Money price, String source) {}
