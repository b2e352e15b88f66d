package org.loomwright.model.rules;

import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.WireSize;

/**
 * The shop's limits, allowances and prices.
 *
 * @param id name used in references
 * @param name name for people
 * @param revision revision of this document
 * @param fuseLoading most continuous load of a new fuse, as share of its rating
 * @param hostLoadingCabin most load, old and new, of a host fuse in the cabin
 * @param hostLoadingEngineBay the same in the engine bay
 * @param wireOverFuse least allowed current of a lead as share of the fuse before it
 * @param feedDrop most voltage drop on the feed, as share of nominal supply
 * @param splicedFeedDrop most voltage drop from the source to the pin where the feed joins a
 *     factory circuit and shares its wire, as share of nominal supply
 * @param groundDrop most voltage drop on the ground, as share of nominal supply
 * @param marginalBand how near to a limit a check is called marginal
 * @param leastSupplyArea mechanical minimum of a supply or ground lead
 * @param leastSignalArea mechanical minimum of a signal lead
 * @param slackPerEnd slack at each end
 * @param serviceLoop extra length so that a terminal can be made again once
 * @param cutRounding cut lengths are rounded up to a multiple of this
 * @param cutTolerance how far a cut may be off
 * @param spliceSpacing least distance of a splice from another, a branch or a connector
 * @param wireAttrition wire bought beyond the cut lengths
 * @param partAttrition terminals and seals bought beyond need
 * @param hourlyRate price of an hour of work
 * @param cutStripTime bench time to cut and strip a lead
 * @param crimpTime bench time for a terminal or ring
 * @param spliceTime time for a splice
 * @param insertTime bench time to put a terminal into a housing
 * @param labelTime time to label a lead
 * @param testTime time to test a lead
 * @param reworkTime time to change an end in the vehicle
 * @param parkTime time to cap, label and tape back a lead
 * @param numberCarryCost cost per kit sold of carrying one more part number
 * @param electrics electric values to go by where neither the vehicle nor the part says its own
 * @param runs how bundles are led, covered, held and laid out, where the defaults don't do
 */
public record Rules(
    String id,
    String name,
    String revision,
    Sourced<Percent> fuseLoading,
    Sourced<Percent> hostLoadingCabin,
    Sourced<Percent> hostLoadingEngineBay,
    Sourced<Percent> wireOverFuse,
    Sourced<Percent> feedDrop,
    Sourced<Percent> splicedFeedDrop,
    Sourced<Percent> groundDrop,
    Sourced<Percent> marginalBand,
    Sourced<WireSize> leastSupplyArea,
    Sourced<WireSize> leastSignalArea,
    Sourced<Length> slackPerEnd,
    Sourced<Length> serviceLoop,
    Sourced<Length> cutRounding,
    Sourced<Length> cutTolerance,
    Sourced<Length> spliceSpacing,
    Sourced<Percent> wireAttrition,
    Sourced<Percent> partAttrition,
    Sourced<Money> hourlyRate,
    Sourced<TimeSpan> cutStripTime,
    Sourced<TimeSpan> crimpTime,
    Sourced<TimeSpan> spliceTime,
    Sourced<TimeSpan> insertTime,
    Sourced<TimeSpan> labelTime,
    Sourced<TimeSpan> testTime,
    Sourced<TimeSpan> reworkTime,
    Sourced<TimeSpan> parkTime,
    Sourced<Money> numberCarryCost,
    Optional<Electrics> electrics,
    Optional<RunRules> runs)
    implements Document {}
