package org.loomwright.model.workspace;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Checks one end of a lead of the user's own: that it exists, and is free on some build. */
final class OwnEndChecks {
  private final Scope scope;
  private final Kit kit;
  private final Library library;
  private final Optional<Library.Entry> entry;
  private final Optional<Vehicle> vehicle;

  OwnEndChecks(Scope scope, Kit kit, Library library, Optional<Library.Entry> entry) {
    this.scope = scope;
    this.kit = kit;
    this.library = library;
    this.entry = entry;
    this.vehicle = entry.flatMap(it -> it.document(Vehicle.class));
  }

  /** Checks an end; true when nothing was found. */
  boolean check(OwnLead lead, String key, OwnEnd end) {
    Optional<String> wrong =
        end instanceof OwnEnd.OfCavity it
            ? cavity(it.connector(), it.cavity())
            : end instanceof OwnEnd.OfPin it
                ? pin(it)
                : end instanceof OwnEnd.OfGround it
                    ? ground(it.ground())
                    : place(((OwnEnd.Loose) end).place(), Sort.PLACE);
    wrong.ifPresent(message -> scope.problem(lead, key, end.text(), message));
    return wrong.isEmpty();
  }

  /** The spot as a name that is equal for equal spots, however they are written. */
  String spot(OwnEnd end) {
    if (end instanceof OwnEnd.OfPin it) {
      return mount(it)
          .flatMap(Mount::connector)
          .map(connector -> new OwnEnd.OfCavity(connector, it.cavity()).text())
          .orElse(end.text());
    }
    return end.text();
  }

  /** Where an end is; empty when that is not known. */
  Optional<String> place(OwnEnd end) {
    if (end instanceof OwnEnd.OfCavity it) {
      return vehicle.flatMap(on -> on.connector(it.connector())).map(Connector::place);
    }
    if (end instanceof OwnEnd.OfPin it) {
      return mount(it)
          .flatMap(
              mount ->
                  mount
                      .place()
                      .or(
                          () ->
                              mount
                                  .connector()
                                  .flatMap(id -> vehicle.flatMap(on -> on.connector(id)))
                                  .map(Connector::place)));
    }
    if (end instanceof OwnEnd.OfGround it) {
      return vehicle.flatMap(on -> on.ground(it.ground())).map(GroundStud::place);
    }
    return Optional.of(((OwnEnd.Loose) end).place());
  }

  private Optional<String> place(String id, Sort sort) {
    return entry.flatMap(it -> library.names(it).names().wrong(sort, id));
  }

  private Optional<String> cavity(String connectorId, String cavity) {
    Optional<String> unknown = place(connectorId, Sort.CONNECTOR);
    Optional<Connector> connector = vehicle.flatMap(it -> it.connector(connectorId));
    if (unknown.isPresent() || connector.isEmpty()) {
      return unknown;
    }
    return library
        .parts()
        .wrongEnd(connector.get().housing(), cavity)
        .or(() -> untouchable(connector.get()))
        .or(() -> blocked(connector.get(), cavity))
        .or(() -> wired(connector.get(), cavity))
        .or(() -> needed(connectorId, cavity));
  }

  private static Optional<String> untouchable(Connector connector) {
    return connector.restraint() || connector.highVoltage()
        ? Optional.of(
            "connector '"
                + connector.id()
                + "' belongs to "
                + (connector.restraint() ? "airbags or pretensioners" : "the high-voltage system")
                + " and is never touched; choose another")
        : Optional.empty();
  }

  private static Optional<String> blocked(Connector connector, String cavity) {
    return connector
        .cavity(cavity)
        .flatMap(CavityFact::blockedWhen)
        .filter(OwnEndChecks::isAlways)
        .map(
            it ->
                "cavity '"
                    + cavity
                    + "' of '"
                    + connector.id()
                    + "' is blocked on every build; take another");
  }

  private Optional<String> wired(Connector connector, String cavity) {
    Spot spot = new Spot.OfCavity(connector.id(), cavity);
    List<Circuit> circuits = vehicle.map(Vehicle::circuits).orElse(List.of());
    return circuits.stream()
        .filter(it -> it.from().equals(spot) || it.to().contains(spot))
        .filter(it -> isAlways(it.presentWhen()))
        .findFirst()
        .map(
            it ->
                "cavity '"
                    + cavity
                    + "' of '"
                    + connector.id()
                    + "' holds the wire '"
                    + it.id()
                    + "' on every build; take an empty cavity. To connect equipment to that wire,"
                    + " write the need into the equipment's document");
  }

  private static boolean isAlways(Condition condition) {
    return condition.expr() instanceof Expr.Always;
  }

  /** A cavity of a connector into which a pin with a need is plugged. */
  private Optional<String> needed(String connector, String cavity) {
    return kit.mounts().stream()
        .filter(it -> it.connector().filter(connector::equals).isPresent())
        .flatMap(it -> needed(it, cavity).stream())
        .findFirst();
  }

  private Optional<String> needed(Mount mount, String cavity) {
    return plug(mount).stream()
        .flatMap(it -> it.pins().stream())
        .filter(it -> it.cavity().equals(cavity) && it.need().isPresent())
        .findFirst()
        .map(it -> refused(mount, it));
  }

  private static String refused(Mount mount, Pin pin) {
    return "cavity '"
        + pin.cavity()
        + "' of plug '"
        + mount.plug()
        + "' is for '"
        + pin.name()
        + "', a need of '"
        + mount.equipment()
        + "': the planner finds the lead for it, with its fuse; take a cavity that no need uses";
  }

  private Optional<String> pin(OwnEnd.OfPin end) {
    Optional<Mount> mount = mount(end);
    if (mount.isEmpty()) {
      return Optional.of(
          "the kit has no mount of plug '"
              + end.plug()
              + "' of '"
              + end.equipment()
              + "'; its mounts are "
              + kit.mounts().stream()
                  .map(it -> it.equipment() + " " + it.plug())
                  .collect(java.util.stream.Collectors.joining(", ")));
    }
    Optional<Plug> plug = plug(mount.get());
    return plug.flatMap(it -> library.parts().wrongEnd(it.matesWith(), end.cavity()))
        .or(() -> needed(mount.get(), end.cavity()))
        .or(() -> mount.get().connector().flatMap(it -> cavity(it, end.cavity())));
  }

  private Optional<Mount> mount(OwnEnd.OfPin end) {
    return kit.mounts().stream()
        .filter(it -> it.equipment().equals(end.equipment()) && it.plug().equals(end.plug()))
        .findFirst();
  }

  private Optional<Plug> plug(Mount mount) {
    return library
        .find(Sort.EQUIPMENT, mount.equipment())
        .flatMap(it -> it.document(Equipment.class))
        .flatMap(
            it -> it.plugs().stream().filter(plug -> plug.id().equals(mount.plug())).findFirst());
  }

  private Optional<String> ground(String id) {
    Optional<String> unknown = place(id, Sort.GROUND);
    Optional<GroundStud> stud = vehicle.flatMap(it -> it.ground(id));
    if (unknown.isPresent() || stud.isEmpty()) {
      return unknown;
    }
    if (stud.get().sensor()) {
      return Optional.of(
          "ground stud '"
              + id
              + "' serves sensors; a load there shifts their signals; take another");
    }
    return stud.get().lugs() < stud.get().lugsMost()
        ? Optional.empty()
        : Optional.of(
            "ground stud '"
                + id
                + "' carries "
                + stud.get().lugs()
                + " lugs, all it may; take another");
  }
}
