package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;

/**
 * One model family with all that is known of it.
 *
 * @param id name used in references
 * @param name name for people
 * @param revision revision of this document
 * @param supply nominal supply voltage
 * @param supplyLowest lowest voltage at the fuse blocks with the engine off, for drop checks
 * @param source battery and alternator; absent takes the shop's rules
 * @param battery where the battery is isolated: a place
 * @param batteryOpenings what must be open to isolate it
 * @param restraintWait waiting time of the maker before work near airbag or pretensioner wiring
 * @param sleepWait how long the vehicle takes to go to sleep after it was locked; the key-off
 *     current is read after it
 * @param splicePolicy what the maker allows on its wires
 * @param traits ways in which builds differ
 * @param rules builds that do not exist
 * @param openings panels and covers
 * @param planView the vehicle from above; absent when there is none
 * @param places spots
 * @param runs paths
 * @param connectors connectors
 * @param fuseBlocks fuse blocks
 * @param grounds ground studs
 * @param circuits factory circuits, present or known from better-equipped builds
 */
public record Vehicle(
    String id,
    String name,
    String revision,
    Voltage supply,
    Voltage supplyLowest,
    Optional<PowerSource> source,
    String battery,
    List<String> batteryOpenings,
    Optional<TimeSpan> restraintWait,
    Optional<TimeSpan> sleepWait,
    SplicePolicy splicePolicy,
    List<Trait> traits,
    List<Exclusion> rules,
    List<Opening> openings,
    Optional<PlanView> planView,
    List<Place> places,
    List<Run> runs,
    List<Connector> connectors,
    List<FuseBlock> fuseBlocks,
    List<GroundStud> grounds,
    List<Circuit> circuits)
    implements Document {
  public Vehicle {
    batteryOpenings = List.copyOf(batteryOpenings);
    traits = List.copyOf(traits);
    rules = List.copyOf(rules);
    openings = List.copyOf(openings);
    places = List.copyOf(places);
    runs = List.copyOf(runs);
    connectors = List.copyOf(connectors);
    fuseBlocks = List.copyOf(fuseBlocks);
    grounds = List.copyOf(grounds);
    circuits = List.copyOf(circuits);
  }

  /** The connector with this id. */
  public Optional<Connector> connector(String connectorId) {
    return connectors.stream().filter(it -> it.id().equals(connectorId)).findFirst();
  }

  /** The fuse block with this id. */
  public Optional<FuseBlock> fuseBlock(String blockId) {
    return fuseBlocks.stream().filter(it -> it.id().equals(blockId)).findFirst();
  }

  /** The ground stud with this id. */
  public Optional<GroundStud> ground(String groundId) {
    return grounds.stream().filter(it -> it.id().equals(groundId)).findFirst();
  }

  /** The circuit with this id. */
  public Optional<Circuit> circuit(String circuitId) {
    return circuits.stream().filter(it -> it.id().equals(circuitId)).findFirst();
  }

  /** The place with this id. */
  public Optional<Place> place(String placeId) {
    return places.stream().filter(it -> it.id().equals(placeId)).findFirst();
  }

  /** The opening with this id. */
  public Optional<Opening> opening(String openingId) {
    return openings.stream().filter(it -> it.id().equals(openingId)).findFirst();
  }
}
