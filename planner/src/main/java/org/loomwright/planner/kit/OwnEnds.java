package org.loomwright.planner.kit;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.ways.Demand;

/** The spots where one end of a lead of the user's own can be landed, with what each needs. */
final class OwnEnds {
  private final KitOrder order;
  private final Facts facts;

  OwnEnds(KitOrder order, Facts facts) {
    this.order = order;
    this.facts = facts;
  }

  /**
   * One spot of an end.
   *
   * @param touch the spot
   * @param demands what must be so for it
   */
  record Option(Touch touch, List<Demand> demands) {
    Option {
      demands = List.copyOf(demands);
    }

    /** Builds on which the end can be landed there. */
    Region on(Region all) {
      return demands.stream().map(Demand::holds).reduce(all, Region::and);
    }
  }

  /** Spots of an end, on builds that exclude one another. */
  List<Option> of(OwnEnd end) {
    if (end instanceof OwnEnd.OfCavity it) {
      return order.vehicle().connector(it.connector()).stream()
          .map(connector -> cavity(connector, it.cavity()))
          .toList();
    }
    if (end instanceof OwnEnd.OfPin it) {
      return pin(it);
    }
    if (end instanceof OwnEnd.OfGround it) {
      return order.vehicle().ground(it.ground()).stream()
          .map((GroundStud stud) -> new Touch.AtGround(stud.id(), stud.place()))
          .map(touch -> new Option(touch, List.of()))
          .toList();
    }
    return List.of(new Option(new Touch.AtLoose(((OwnEnd.Loose) end).place()), List.of()));
  }

  private Option cavity(Connector connector, String cavity) {
    Region all = facts.builds().possible();
    String at = "cavity " + cavity + " of " + connector.name();
    Region there = facts.present(connector);
    return new Option(
        new Touch.AtCavity(connector.id(), cavity, connector.place()),
        List.of(
            new Demand(there, connector.name() + " is not there"),
            new Demand(
                all.minus(facts.wired(connector.id(), cavity).and(there)),
                at + " already holds a wire"),
            new Demand(all.minus(facts.blocked(connector, cavity)), at + " is blocked")));
  }

  // In the vehicle's connector where there is one, in a housing of the kit where there is none.
  private List<Option> pin(OwnEnd.OfPin end) {
    Optional<Mount> mount = mount(end);
    Optional<String> housing = mount.flatMap(order::plug).map(plug -> plug.matesWith());
    if (mount.isEmpty() || housing.isEmpty()) {
      return List.of();
    }
    String id = end.equipment() + "/" + end.plug();
    if (mount.get().place().isPresent()) {
      return List.of(
          new Option(
              new Touch.AtHousing(id, housing.get(), end.cavity(), mount.get().place().get()),
              List.of()));
    }
    Optional<Connector> connector = mount.get().connector().flatMap(order.vehicle()::connector);
    if (connector.isEmpty()) {
      return List.of();
    }
    Region absent = facts.builds().possible().minus(facts.present(connector.get()));
    Option own =
        new Option(
            new Touch.AtHousing(id, housing.get(), end.cavity(), connector.get().place()),
            List.of(new Demand(absent, connector.get().name() + " is there already")));
    Option inVehicle = cavity(connector.get(), end.cavity());
    return absent.isEmpty() ? List.of(inVehicle) : List.of(inVehicle, own);
  }

  private Optional<Mount> mount(OwnEnd.OfPin end) {
    return order.kit().mounts().stream()
        .filter(it -> it.equipment().equals(end.equipment()) && it.plug().equals(end.plug()))
        .findFirst();
  }
}
