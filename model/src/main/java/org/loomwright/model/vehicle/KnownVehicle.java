package org.loomwright.model.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.loomwright.model.condition.Condition;

/**
 * A vehicle in which every unknown fact has become a trait with both truths, so that questions,
 * planning and proof treat "not known" like any other difference between builds.
 *
 * <p>A fact written as "unknown" gets a trait named after it (for instance {@code
 * rear-block/F9/metal}) with the values {@code yes} and {@code no}; the fact's condition becomes
 * "that trait is yes".
 */
public final class KnownVehicle {
  private KnownVehicle() {}

  /** The vehicle with unknown facts turned into traits; the same vehicle when there are none. */
  public static Vehicle of(Vehicle vehicle) {
    List<Trait> traits = new ArrayList<>(vehicle.traits());
    List<Connector> connectors = new ArrayList<>();
    for (Connector it : vehicle.connectors()) {
      connectors.add(connector(it, traits));
    }
    List<FuseBlock> blocks = new ArrayList<>();
    for (FuseBlock it : vehicle.fuseBlocks()) {
      blocks.add(block(it, traits));
    }
    List<Circuit> circuits = new ArrayList<>();
    for (Circuit it : vehicle.circuits()) {
      circuits.add(circuit(it, traits));
    }
    return new Vehicle(
        vehicle.id(),
        vehicle.name(),
        vehicle.revision(),
        vehicle.supply(),
        vehicle.supplyLowest(),
        vehicle.source(),
        vehicle.battery(),
        vehicle.batteryOpenings(),
        vehicle.restraintWait(),
        vehicle.sleepWait(),
        vehicle.splicePolicy(),
        traits,
        vehicle.rules(),
        vehicle.openings(),
        vehicle.planView(),
        vehicle.places(),
        vehicle.runs(),
        connectors,
        blocks,
        vehicle.grounds(),
        circuits);
  }

  /** Ids of the traits that stand for unknown facts of the given, not yet converted vehicle. */
  public static SortedSet<String> unknownTraits(Vehicle vehicle) {
    SortedSet<String> ids = new TreeSet<>();
    of(vehicle).traits().forEach(trait -> ids.add(trait.id()));
    vehicle.traits().forEach(trait -> ids.remove(trait.id()));
    return ids;
  }

  private static Connector connector(Connector it, List<Trait> traits) {
    List<CavityFact> cavities = new ArrayList<>();
    for (CavityFact fact : it.cavities()) {
      String id = it.id() + "/" + fact.cavity();
      String at = "cavity " + fact.cavity() + " of " + it.name();
      cavities.add(
          new CavityFact(
              fact.cavity(),
              fact.pluggedWhen()
                  .map(
                      when ->
                          settle(
                              when,
                              id + "/plugged",
                              at + " has a seal plug",
                              at + " has no seal plug",
                              fact.tell(),
                              traits)),
              fact.blockedWhen()
                  .map(
                      when ->
                          settle(
                              when,
                              id + "/blocked",
                              at + " is blocked",
                              at + " is open",
                              fact.tell(),
                              traits)),
              fact.tell(),
              fact.evidence()));
    }
    return new Connector(
        it.id(),
        it.name(),
        it.housing(),
        it.matePlating(),
        it.place(),
        it.openings(),
        it.view(),
        it.presentWhen(),
        it.recipe(),
        it.restraint(),
        it.highVoltage(),
        cavities,
        it.evidence(),
        it.photo());
  }

  private static FuseBlock block(FuseBlock it, List<Trait> traits) {
    List<Section> sections = new ArrayList<>();
    for (Section section : it.sections()) {
      sections.add(
          new Section(
              section.id(),
              section.name(),
              section.feed(),
              settle(
                  section.fedWhen(),
                  it.id() + "/" + section.id() + "/fed",
                  section.name() + " of " + it.name() + " is fed",
                  section.name() + " of " + it.name() + " is dead",
                  section.tell(),
                  traits),
              section.tell(),
              section.limit(),
              section.baseLoad(),
              section.feedResistance(),
              section.fuse(),
              section.fuseForm(),
              section.evidence()));
    }
    List<Slot> slots = new ArrayList<>();
    for (Slot slot : it.slots()) {
      slots.add(
          new Slot(
              slot.id(),
              slot.section(),
              slot.form(),
              slot.maxRating(),
              settle(
                  slot.metalWhen(),
                  it.id() + "/" + slot.id() + "/metal",
                  "slot " + slot.id() + " of " + it.name() + " has its metal",
                  "slot " + slot.id() + " of " + it.name() + " has no metal",
                  slot.tell(),
                  traits),
              slot.tell(),
              slot.fedBlade(),
              slot.loadBlade(),
              slot.terminal(),
              slot.evidence()));
    }
    return new FuseBlock(
        it.id(),
        it.name(),
        it.place(),
        it.openings(),
        it.view(),
        it.face(),
        it.recipe(),
        sections,
        slots,
        it.photo());
  }

  private static Circuit circuit(Circuit it, List<Trait> traits) {
    return new Circuit(
        it.id(),
        it.name(),
        it.kind(),
        it.feed(),
        it.from(),
        it.to(),
        it.wire(),
        it.length(),
        it.colour(),
        it.colourAsSeen(),
        settle(
            it.presentWhen(),
            it.id() + "/present",
            it.name() + " is there",
            it.name() + " is not there",
            it.tell(),
            traits),
        it.tell(),
        it.fuse(),
        it.fuseForm(),
        it.load(),
        it.reachedAt(),
        it.restraint(),
        it.evidence());
  }

  private static Condition settle(
      Condition when,
      String traitId,
      String yes,
      String no,
      Optional<Tell> tell,
      List<Trait> traits) {
    if (!when.isUnknown()) {
      return when;
    }
    Tell how =
        tell.orElseThrow(
            () ->
                new IllegalArgumentException(
                    traitId + " is unknown and has no 'tell' that says how to find out"));
    traits.add(
        new Trait(
            traitId,
            "whether " + yes,
            List.of(
                new TraitValue("yes", yes, Optional.empty()),
                new TraitValue("no", no, Optional.empty())),
            how,
            Optional.empty()));
    return Condition.is(traitId, "yes");
  }
}
