package org.loomwright.planner.need;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;

/** The vehicle's facts as regions of builds. */
public final class Facts {
  private final Vehicle vehicle;
  private final Builds builds;
  private final Map<String, Region> present = new HashMap<>();

  /** Facts of a vehicle whose unknown facts have become traits. */
  public Facts(Vehicle vehicle, Builds builds) {
    this.vehicle = vehicle;
    this.builds = builds;
    for (Circuit circuit : vehicle.circuits()) {
      present.put(circuit.id(), builds.where(circuit.presentWhen()));
    }
  }

  /** The vehicle. */
  public Vehicle vehicle() {
    return vehicle;
  }

  /** Its builds. */
  public Builds builds() {
    return builds;
  }

  /** Builds that have a circuit. */
  public Region present(Circuit circuit) {
    return present.getOrDefault(circuit.id(), builds.none());
  }

  /** Builds that have a connector. */
  public Region present(Connector connector) {
    return builds.where(connector.presentWhen());
  }

  /** Circuits that end in a cavity on some build or on a better-equipped one. */
  public List<Circuit> landing(String connector, String cavity) {
    Spot spot = new Spot.OfCavity(connector, cavity);
    return vehicle.circuits().stream()
        .filter(it -> it.to().contains(spot) || it.from().equals(spot))
        .toList();
  }

  /** Builds on which some wire sits in a cavity. */
  public Region wired(String connector, String cavity) {
    return landing(connector, cavity).stream().map(this::present).reduce(builds.none(), Region::or);
  }

  /** Builds on which a seal plug sits in a cavity. */
  public Region plugged(Connector connector, String cavity) {
    return connector
        .cavity(cavity)
        .flatMap(fact -> fact.pluggedWhen())
        .map(builds::where)
        .orElseGet(builds::none);
  }

  /** Builds on which a cavity can't be used. */
  public Region blocked(Connector connector, String cavity) {
    return connector
        .cavity(cavity)
        .flatMap(fact -> fact.blockedWhen())
        .map(builds::where)
        .orElseGet(builds::none);
  }

  /** Builds on which a slot could feed a lead, were no factory circuit on it. */
  public Region usable(FuseBlock block, Slot slot) {
    Region fed =
        block
            .section(slot.section())
            .map(section -> builds.where(section.fedWhen()))
            .orElseGet(builds::none);
    return fed.and(builds.where(slot.metalWhen()));
  }

  /** Builds on which a factory circuit starts at a slot. */
  public Region taken(FuseBlock block, Slot slot) {
    Spot spot = new Spot.OfSlot(block.id(), slot.id());
    return vehicle.circuits().stream()
        .filter(it -> it.from().equals(spot))
        .map(this::present)
        .reduce(builds.none(), Region::or);
  }

  /** Builds on which the source of a circuit is alive: its slot is fed, or it comes from a unit. */
  public Region alive(Circuit circuit) {
    if (circuit.from() instanceof Spot.OfSlot from) {
      Optional<FuseBlock> block = vehicle.fuseBlock(from.block());
      return block
          .flatMap(it -> it.slot(from.slot()).map(slot -> usable(it, slot)))
          .orElseGet(builds::none);
    }
    return circuit.kind() == CircuitKind.GROUND || circuit.from() instanceof Spot.OfUnit
        ? builds.possible()
        : builds.none();
  }

  /** The section that feeds a circuit, where it starts at a slot. */
  public Optional<Section> section(Circuit circuit) {
    return circuit.from() instanceof Spot.OfSlot from
        ? vehicle
            .fuseBlock(from.block())
            .flatMap(block -> block.slot(from.slot()).flatMap(s -> block.section(s.section())))
        : Optional.empty();
  }
}
