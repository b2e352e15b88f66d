package org.loomwright.model.parts;

import java.util.Optional;
import org.loomwright.model.quantity.Current;
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
 * @param insulationLeast smallest insulation diameter its crimp holds
 * @param insulationMost largest insulation diameter its crimp holds
 * @param currentLimit most continuous current
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
    Optional<Length> insulationLeast,
    Optional<Length> insulationMost,
    Optional<Current> currentLimit,
    Length strip,
    String tool,
    Money price,
    String source) {}
