package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.HostLimit;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.Load;

/** Ways that join a factory circuit of the same feed. */
final class SpliceWays {
  private final KitOrder order;
  private final Facts facts;
  private final WayParts parts;

  SpliceWays(KitOrder order, Facts facts, LeadCosts costs) {
    this.order = order;
    this.facts = facts;
    this.parts = new WayParts(order, facts, costs);
  }

  List<Way> of(NeedAt need, PinSide side) {
    List<Way> ways = new ArrayList<>();
    for (Circuit circuit : order.vehicle().circuits()) {
      if (circuit.kind() != SlotWays.kind(need)
          || !circuit.feed().equals(need.need().feed())
          || circuit.reachedAt().isEmpty()) {
        continue;
      }
      for (String place : circuit.reachedAt()) {
        ways.add(way(need, side, circuit, place));
      }
    }
    return ways;
  }

  private Way way(NeedAt need, PinSide side, Circuit circuit, String place) {
    double fuseA = circuit.fuse().map(it -> it.amperes()).orElse(0.0);
    double roomA =
        HostLimit.of(circuit, order.vehicle(), order.rules()) * fuseA
            - circuit.load().map(it -> it.amperes()).orElse(0.0);
    LeadDraft lead =
        new LeadDraft(SlotWays.kind(need), new Touch.AtCircuit(circuit.id(), place), side.touch());
    return parts.way(
        need.id() + " > splice " + circuit.id() + " at " + place,
        need,
        WayKind.SPLICE,
        "splice into " + circuit.name() + " at " + placeName(place),
        side,
        List.of(
            new Demand(facts.present(circuit), circuit.name() + " is not there"),
            new Demand(facts.alive(circuit), circuit.name() + " is not fed")),
        List.of(lead),
        Load.of(need.need()),
        FuseBefore.of(order, circuit, place),
        uses(circuit, need, roomA),
        Optional.of(circuit),
        forbidden(need, circuit, fuseA, roomA));
  }

  private List<Use> uses(Circuit circuit, NeedAt need, double roomA) {
    List<Use> uses = new ArrayList<>();
    uses.add(new Use("circuit " + circuit.id(), need.currentA(), roomA, circuit.name()));
    facts
        .section(circuit)
        .ifPresent(
            section ->
                uses.add(
                    new Use(
                        "section "
                            + ((org.loomwright.model.vehicle.Spot.OfSlot) circuit.from()).block()
                            + " "
                            + section.id(),
                        need.currentA(),
                        section.limit().amperes() - section.baseLoad().amperes(),
                        section.name())));
    return uses;
  }

  private Optional<String> forbidden(NeedAt need, Circuit circuit, double fuseA, double roomA) {
    if (circuit.restraint()) {
      return Optional.of("restraint wiring is never touched");
    }
    if (order.vehicle().splicePolicy() == SplicePolicy.NONE) {
      return Optional.of("the vehicle's maker allows no splice into its wires");
    }
    if (need.need().ownFuse()) {
      return Optional.of("the pin must have a fuse of its own");
    }
    if (circuit.fuse().isEmpty() || circuit.load().isEmpty()) {
      return Optional.of("the fuse or the load of " + circuit.name() + " is not on file");
    }
    if (need.currentA() > roomA + 1e-9) {
      return Optional.of(
          circuit.name()
              + " has no room for it behind its "
              + circuit.fuse().get().text()
              + " fuse");
    }
    if (need.need().fuseAtMost().isPresent()
        && fuseA > need.need().fuseAtMost().get().amperes() + 1e-9) {
      return Optional.of(
          circuit.name()
              + " is fused at "
              + circuit.fuse().get().text()
              + ", above the "
              + need.need().fuseAtMost().get().text()
              + " allowed");
    }
    return Optional.empty();
  }

  private String placeName(String place) {
    return order.vehicle().place(place).map(Place::name).orElse(place);
  }
}
