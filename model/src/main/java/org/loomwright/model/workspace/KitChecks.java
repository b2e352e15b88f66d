package org.loomwright.model.workspace;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Checks a kit against the documents it names. */
final class KitChecks {
  private final Scope scope;
  private final Kit kit;
  private final Library library;
  private final Optional<Library.Entry> vehicle;

  private KitChecks(Scope scope, Kit kit, Library library) {
    this.scope = scope;
    this.kit = kit;
    this.library = library;
    this.vehicle = library.find(Sort.VEHICLE, kit.vehicle());
  }

  static void check(Scope scope, Kit kit, Library library) {
    new KitChecks(scope, kit, library).checkAll();
  }

  private void checkAll() {
    Names documents = library.documents();
    scope.reference(kit, "vehicle", documents, Sort.VEHICLE, kit.vehicle());
    scope.reference(kit, "rules", documents, Sort.RULES, kit.rules());
    scope.references(kit, "parts", documents, Sort.PARTS, kit.parts());
    if (scope.sound(kit) && kit.parts().isEmpty()) {
      scope.problem(kit, "parts", "", "a kit needs at least one parts list to choose from");
    }
    if (scope.sound(kit) && kit.mounts().isEmpty()) {
      scope.problem(kit, "mounts", "", "a kit needs at least one mount: what is plugged in where");
    }
    scope.unique(kit.mounts(), "plug", mount -> mount.equipment() + " " + mount.plug());
    kit.mounts().forEach(this::mount);
    new OwnLeadChecks(scope, kit, library, vehicle).check();
    demands();
    designedAgainst(documents);
    partsAtHand();
  }

  private void mount(Mount mount) {
    scope.reference(mount, "equipment", library.documents(), Sort.EQUIPMENT, mount.equipment());
    Optional<Library.Entry> equipment = library.find(Sort.EQUIPMENT, mount.equipment());
    equipment.ifPresent(
        it -> {
          Names plugs = new Names(true);
          plugs.add(Sort.PLUG, Tree.ids(it.source().tree(), "plugs"));
          scope.reference(mount, "plug", plugs, Sort.PLUG, mount.plug());
        });
    if (vehicle.isEmpty()) {
      return;
    }
    VehicleNames names = library.names(vehicle.get());
    mount
        .connector()
        .ifPresent(it -> scope.reference(mount, "connector", names.names(), Sort.CONNECTOR, it));
    mount.place().ifPresent(it -> scope.reference(mount, "place", names.names(), Sort.PLACE, it));
    vehicle.get().document(Vehicle.class).ifPresent(it -> mountOn(mount, it, equipment));
  }

  private void mountOn(Mount mount, Vehicle on, Optional<Library.Entry> equipment) {
    Optional<Connector> connector = mount.connector().flatMap(on::connector);
    connector.ifPresent(
        it -> {
          if (it.restraint() || it.highVoltage()) {
            scope.problem(
                mount,
                "connector",
                it.id(),
                "connector '"
                    + it.id()
                    + "' belongs to "
                    + (it.restraint() ? "airbags or pretensioners" : "the high-voltage system")
                    + " and is never touched; choose another");
          }
          equipment
              .flatMap(entry -> entry.document(Equipment.class))
              .flatMap(entry -> plug(entry, mount.plug()))
              .ifPresent(plug -> mates(mount, it, plug));
        });
    Optional<String> place = mount.place().or(() -> connector.map(Connector::place));
    boolean known = place.flatMap(on::place).isPresent();
    if (known && !RunChecks.reached(on, sources(on)).contains(place.get())) {
      scope.problem(
          mount,
          mount.place().isPresent() ? "place" : "connector",
          place.get(),
          "no usable run leads to '"
              + place.get()
              + "' from a fuse block, a ground stud or a circuit; add the run to the vehicle");
    }
  }

  private void mates(Mount mount, Connector connector, Plug plug) {
    boolean given = !connector.housing().isEmpty() && !plug.matesWith().isEmpty();
    if (given && !connector.housing().equals(plug.matesWith())) {
      scope.problem(
          mount,
          "connector",
          connector.id(),
          "plug '"
              + plug.id()
              + "' mates with housing '"
              + plug.matesWith()
              + "', but connector '"
              + connector.id()
              + "' has housing '"
              + connector.housing()
              + "'");
    }
  }

  private static Optional<Plug> plug(Equipment equipment, String id) {
    return equipment.plugs().stream().filter(plug -> plug.id().equals(id)).findFirst();
  }

  /** Places where a lead can begin or end. */
  private static Set<String> sources(Vehicle vehicle) {
    Set<String> places = new HashSet<>();
    vehicle.fuseBlocks().stream().map(FuseBlock::place).forEach(places::add);
    vehicle.grounds().stream().map(GroundStud::place).forEach(places::add);
    for (Circuit circuit : vehicle.circuits()) {
      places.addAll(circuit.reachedAt());
      for (Spot spot : circuit.to()) {
        if (spot instanceof Spot.OfCavity at) {
          vehicle.connector(at.connector()).map(Connector::place).ifPresent(places::add);
        }
      }
    }
    return places;
  }

  /** The equipment's conditions are about this kit's vehicle; problems are the equipment's. */
  private void demands() {
    if (vehicle.isEmpty()) {
      return;
    }
    VehicleNames names = library.names(vehicle.get());
    Set<String> ids = new TreeSet<>(kit.mounts().stream().map(Mount::equipment).toList());
    for (String id : ids) {
      Optional<Library.Entry> entry = library.find(Sort.EQUIPMENT, id);
      Optional<Equipment> equipment = entry.flatMap(it -> it.document(Equipment.class));
      if (equipment.isEmpty()) {
        continue;
      }
      Scope of = library.scope(entry.get());
      for (Demand demand :
          Stream.concat(equipment.get().modules().stream(), equipment.get().coding().stream())
              .toList()) {
        for (String message : names.wrong(demand.metWhen())) {
          of.problem(
              demand,
              "metWhen",
              demand.metWhen().text(),
              message + " (vehicle '" + kit.vehicle() + "' of kit '" + kit.id() + "')");
        }
      }
    }
  }

  private void designedAgainst(Names documents) {
    Set<String> all = new TreeSet<>();
    for (Sort sort : List.of(Sort.VEHICLE, Sort.EQUIPMENT, Sort.KIT, Sort.PARTS, Sort.RULES)) {
      all.addAll(documents.of(sort));
    }
    for (Map.Entry<String, String> entry : kit.designedAgainst().entrySet()) {
      if (!all.contains(entry.getKey()) && library.complete()) {
        scope.problem(
            kit,
            "designedAgainst",
            entry.getKey(),
            "there is no document '"
                + entry.getKey()
                + "'"
                + Nearest.hint(entry.getKey(), "the documents are", all));
      }
    }
  }

  /** What the kit needs must be on its own parts lists, not just on any list of the folder. */
  private void partsAtHand() {
    List<Source> lists =
        kit.parts().stream()
            .flatMap(id -> library.find(Sort.PARTS, id).stream())
            .map(Library.Entry::source)
            .toList();
    if (lists.isEmpty() || lists.size() < kit.parts().size()) {
      return;
    }
    Names atHand = new PartNames(lists, true).names();
    Names anywhere = library.parts().names();
    vehicle
        .flatMap(it -> it.document(Vehicle.class))
        .ifPresent(
            it -> {
              for (Connector connector : it.connectors()) {
                need(
                    Sort.HOUSING,
                    connector.housing(),
                    "connector " + connector.id(),
                    atHand,
                    anywhere);
              }
              for (FuseBlock block : it.fuseBlocks()) {
                block
                    .face()
                    .ifPresent(
                        face ->
                            need(Sort.HOUSING, face, "fuse block " + block.id(), atHand, anywhere));
                block
                    .slots()
                    .forEach(
                        slot ->
                            need(
                                Sort.TERMINAL,
                                slot.terminal(),
                                "slot " + slot.id() + " of " + block.id(),
                                atHand,
                                anywhere));
              }
            });
    for (Mount mount : kit.mounts()) {
      library
          .find(Sort.EQUIPMENT, mount.equipment())
          .flatMap(it -> it.document(Equipment.class))
          .flatMap(it -> plug(it, mount.plug()))
          .ifPresent(
              plug -> need(Sort.HOUSING, plug.matesWith(), "plug " + plug.id(), atHand, anywhere));
    }
  }

  private void need(Sort sort, String id, String who, Names atHand, Names anywhere) {
    // A part that is on no list at all is the other document's problem.
    if (!atHand.has(sort, id) && anywhere.has(sort, id)) {
      scope.problem(
          kit,
          "parts",
          id,
          who
              + " needs "
              + sort.bare()
              + " '"
              + id
              + "', which is on another list than "
              + String.join(", ", kit.parts())
              + "; add that list");
    }
  }
}
