package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Load;

/** Ways that take a ground to a stud. */
final class StudWays {
  private final KitOrder order;
  private final WayParts parts;
  private final Map<String, Use> own;

  StudWays(KitOrder order, Facts facts, LeadCosts costs) {
    this.order = order;
    this.own = OwnUses.of(order);
    this.parts = new WayParts(order, facts, costs);
  }

  List<Way> of(NeedAt need, PinSide side) {
    List<Way> ways = new ArrayList<>();
    for (GroundStud stud : order.vehicle().grounds()) {
      LeadDraft lead =
          new LeadDraft(
              CircuitKind.GROUND, side.touch(), new Touch.AtGround(stud.id(), stud.place()));
      ways.add(
          parts.way(
              need.id() + " > stud " + stud.id(),
              need,
              WayKind.GROUND_STUD,
              "ground on " + stud.name(),
              side,
              List.of(),
              List.of(lead),
              Load.of(need.need()),
              FaultFuse.of(need, order),
              List.of(
                  new Use(
                      OwnUses.current(stud),
                      need.currentA(),
                      OwnUses.currentRoomA(stud) - own(OwnUses.current(stud)),
                      stud.name() + beside(OwnUses.lugs(stud))),
                  new Use(
                      OwnUses.lugs(stud),
                      1,
                      OwnUses.lugRoom(stud) - own(OwnUses.lugs(stud)),
                      "lug positions of " + stud.name() + beside(OwnUses.lugs(stud)))),
              Optional.empty(),
              stud.sensor()
                  ? Optional.of(stud.name() + " serves sensors; a load there shifts their signals")
                  : Optional.empty()));
    }
    return ways;
  }

  private String beside(String resource) {
    return own(resource) > 0 ? " beside the kit's own leads" : "";
  }

  // What the user's own leads take of it.
  private double own(String resource) {
    Use use = own.get(resource);
    return use == null ? 0 : use.amount();
  }
}
