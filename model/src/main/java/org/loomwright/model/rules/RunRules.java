package org.loomwright.model.rules;

import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;

/**
 * How bundles are led, covered, held and laid out. What is left out is taken from {@link
 * RunDefaults}.
 *
 * <p>Factors weigh the length of a run when paths are compared: 80 % makes a metre count as 0.8 m.
 *
 * @param loomFactor weight of a run along a factory loom, at most 100 %
 * @param hotFrom ambient from which a run counts as hot
 * @param hotFactor weight of a hot run, at least 100 %
 * @param wetFactor weight of a wet run, at least 100 %
 * @param movingFactor weight of a run on which the bundle bends in use, at least 100 %
 * @param mostDetour longest way of a lead in the tree over its own shortest way, at least 100 %
 * @param clearExhaust least distance to exhaust parts
 * @param clearMoving least distance to moving parts
 * @param clearPipes least distance to brake and fuel pipes
 * @param clearBattery least distance to the battery
 * @param clearFixings least distance to trim fixings
 * @param bendFixed least radius of a bend over the bundle's diameter, where nothing moves
 * @param bendMoving the same where the bundle bends in use
 * @param clipSpacing most distance between two clips
 * @param firstClip most distance of the first clip from a connector
 * @param conduitFill most share of a conduit's inner section that the bundle takes
 * @param holeFill most share of a hole's or grommet's bore that all bundles in it take
 * @param tapeOverlap share of the tape's width by which a turn covers the last
 * @param boardWidth width of the board
 * @param boardHeight height of the board
 * @param paper paper the board is printed on
 */
public record RunRules(
    Optional<Sourced<Percent>> loomFactor,
    Optional<Sourced<Temperature>> hotFrom,
    Optional<Sourced<Percent>> hotFactor,
    Optional<Sourced<Percent>> wetFactor,
    Optional<Sourced<Percent>> movingFactor,
    Optional<Sourced<Percent>> mostDetour,
    Optional<Sourced<Length>> clearExhaust,
    Optional<Sourced<Length>> clearMoving,
    Optional<Sourced<Length>> clearPipes,
    Optional<Sourced<Length>> clearBattery,
    Optional<Sourced<Length>> clearFixings,
    Optional<Sourced<Percent>> bendFixed,
    Optional<Sourced<Percent>> bendMoving,
    Optional<Sourced<Length>> clipSpacing,
    Optional<Sourced<Length>> firstClip,
    Optional<Sourced<Percent>> conduitFill,
    Optional<Sourced<Percent>> holeFill,
    Optional<Sourced<Percent>> tapeOverlap,
    Optional<Sourced<Length>> boardWidth,
    Optional<Sourced<Length>> boardHeight,
    Optional<Sourced<PaperSize>> paper) {}
