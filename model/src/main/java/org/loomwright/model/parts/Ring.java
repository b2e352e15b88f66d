package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.WireSize;

/**
 * A ring terminal.
 *
 * @param id part number
 * @param name name for people
 * @param thread thread it fits, e.g. "M6"
 * @param wireLeast smallest conductor it takes
 * @param wireMost largest conductor it takes
 * @param strip strip length
 * @param tool crimp tool or die
 * @param price price
 * @param source where the values come from
 */
public record Ring(
    String id,
    String name,
    String thread,
    WireSize wireLeast,
    WireSize wireMost,
    Length strip,
    String tool,
    Money price,
    String source) {}
