package org.loomwright.model.parts;

import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.WireSize;

/**
 * A splice sleeve with its adhesive-lined shrink; used into a factory wire and as the joint of
 * added leads.
 *
 * @param id part number
 * @param name name for people
 * @param method crimp or solder
 * @param areaLeast least copper of all conductors in it together
 * @param areaMost most copper of all conductors in it together
 * @param insulationMost largest insulation diameter its sleeve goes over
 * @param resistance most resistance from conductor to conductor, after use
 * @param strip strip length
 * @param tool tool
 * @param price price
 * @param source where the values come from
 */
public record Splice(
    String id,
    String name,
    SpliceMethod method,
    WireSize areaLeast,
    WireSize areaMost,
    Optional<Length> insulationMost,
    Optional<Resistance> resistance,
    Length strip,
    String tool,
    Money price,
    String source) {}
