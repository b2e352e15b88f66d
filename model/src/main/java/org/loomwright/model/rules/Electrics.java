package org.loomwright.model.rules;

import java.util.Optional;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Voltage;

/**
 * Electric values to go by where neither the vehicle nor the part says its own. What is left out
 * here too is taken from {@link ElectricDefaults}.
 *
 * @param contact resistance of a crimp and its contact
 * @param splice resistance of a splice, conductor to conductor
 * @param groundPoint resistance of a ring on its stud
 * @param body resistance of the body from a stud to the battery's negative post
 * @param feedCable resistance of cable and joints from the battery to a bus bar
 * @param strongSource internal resistance of a full, warm battery
 * @param weakSource internal resistance of an old, cold battery
 * @param fuseDrop most voltage across a fuse at its rated current
 * @param supplyHighest highest voltage with the engine running
 * @param spliceBalance least share of a splice's copper on its thinner side
 */
public record Electrics(
    Optional<Sourced<Resistance>> contact,
    Optional<Sourced<Resistance>> splice,
    Optional<Sourced<Resistance>> groundPoint,
    Optional<Sourced<Resistance>> body,
    Optional<Sourced<Resistance>> feedCable,
    Optional<Sourced<Resistance>> strongSource,
    Optional<Sourced<Resistance>> weakSource,
    Optional<Sourced<Voltage>> fuseDrop,
    Optional<Sourced<Voltage>> supplyHighest,
    Optional<Sourced<Percent>> spliceBalance) {}
