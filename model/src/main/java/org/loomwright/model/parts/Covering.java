package org.loomwright.model.parts;

import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Temperature;

/**
 * Tape, sleeve or conduit, bought by the metre.
 *
 * @param id part number
 * @param name name for people
 * @param bundleMost largest bundle it covers
 * @param form what sort of covering it is
 * @param wall thickness of its wall, or of its layers together
 * @param inner inner diameter of a conduit
 * @param tapeWidth width of the tape, for the length of tape a bundle takes
 * @param rating highest temperature it bears without end
 * @param price price of a metre of covered bundle
 * @param source where the values come from
 */
public record Covering(
    String id,
    String name,
    Length bundleMost,
    Optional<CoveringForm> form,
    Optional<Length> wall,
    Optional<Length> inner,
    Optional<Length> tapeWidth,
    Temperature rating,
    Money price,
    String source) {}
