package org.loomwright.intake;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Vehicle;

/** Records of a vehicle with a part replaced. */
final class Copies {
  private Copies() {}

  static Circuit with(Circuit it, String id, Evidence evidence) {
    return new Circuit(
        id,
        it.name(),
        it.kind(),
        it.feed(),
        it.from(),
        it.to(),
        it.wire(),
        it.length(),
        it.colour(),
        it.colourAsSeen(),
        it.presentWhen(),
        it.tell(),
        it.fuse(),
        it.fuseForm(),
        it.load(),
        it.reachedAt(),
        it.restraint(),
        Optional.of(evidence));
  }

  static Connector with(Connector it, List<CavityFact> cavities) {
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

  static Vehicle with(Vehicle it, Connector connector, List<Circuit> circuits) {
    return new Vehicle(
        it.id(),
        it.name(),
        it.revision(),
        it.supply(),
        it.supplyLowest(),
        it.source(),
        it.battery(),
        it.batteryOpenings(),
        it.restraintWait(),
        it.sleepWait(),
        it.splicePolicy(),
        it.traits(),
        it.rules(),
        it.openings(),
        it.planView(),
        it.places(),
        it.runs(),
        it.connectors().stream()
            .map(old -> old.id().equals(connector.id()) ? connector : old)
            .toList(),
        it.fuseBlocks(),
        it.grounds(),
        circuits);
  }
}
