package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Wish;
import org.loomwright.model.kit.WishKind;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.Already;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.HostLimit;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;

/**
 * Derives every way to meet every need: already wired; empty cavity to the factory slot; another
 * fed slot; one fused feed shared over a joint; splice into a circuit of the same feed; ground to a
 * stud. Ways that a flag or a policy forbids are kept, with the reason.
 */
public final class WayFinder {
  /** A preferred way counts as costing this share of its cost. */
  private static final double PREFERENCE = 0.01;

  private final KitOrder order;
  private final Facts facts;
  private final SlotWays slots;
  private final SpliceWays splices;
  private final StudWays studs;

  /** Finds ways on one vehicle. */
  public WayFinder(KitOrder order, Facts facts, LeadCosts costs) {
    this.order = order;
    this.facts = facts;
    this.slots = new SlotWays(order, facts, costs);
    this.splices = new SpliceWays(order, facts, costs);
    this.studs = new StudWays(order, facts, costs);
  }

  /** All ways of all needs, in the order of the needs, then by kind, then by id. */
  public Map<NeedAt, List<Way>> find(List<NeedAt> needs) {
    List<List<NeedAt>> shared = Needs.shared(needs);
    Map<NeedAt, List<Way>> all = new LinkedHashMap<>();
    for (NeedAt need : needs) {
      List<NeedAt> group =
          shared.stream().filter(it -> it.contains(need)).findFirst().orElse(List.of(need));
      List<Way> ways = new ArrayList<>(already(need));
      for (PinSide side : PinSide.of(need, facts)) {
        if (need.need().kind() == NeedKind.GROUND) {
          ways.addAll(studs.of(need, side));
        } else {
          ways.addAll(slots.of(need, side));
          if (group.size() > 1) {
            ways.addAll(slots.shared(need, side, group, "J" + (shared.indexOf(group) + 1)));
          }
          ways.addAll(splices.of(need, side));
        }
      }
      ways.replaceAll(this::wished);
      ways.sort(
          java.util.Comparator.comparing((Way way) -> way.kind()).thenComparing(way -> way.id()));
      all.put(need, ways);
    }
    return all;
  }

  private List<Way> already(NeedAt need) {
    List<Way> ways = new ArrayList<>();
    for (Map.Entry<Circuit, Region> one :
        Already.of(need, facts, order.rules()).full().entrySet()) {
      ways.add(
          new Way(
              need.id() + " > already wired by " + one.getKey().id(),
              need,
              WayKind.ALREADY_WIRED,
              "already wired: " + one.getKey().name(),
              List.of(new Demand(one.getValue(), one.getKey().name() + " is not there")),
              one.getValue(),
              List.of(),
              added(need, one.getKey()),
              List.of(),
              0,
              Undo.EASILY,
              Optional.of(one.getKey()),
              Optional.empty(),
              Optional.empty()));
    }
    return ways;
  }

  // What the need adds to the load on file, so that nothing spliced in counts on the same room. The
  // load of a wire that ends at this pin alone is the load of this pin.
  private List<Use> added(NeedAt need, Circuit circuit) {
    double loadA = circuit.load().map(it -> it.amperes()).orElse(0.0);
    double addedA = circuit.to().size() > 1 ? need.currentA() : need.currentA() - loadA;
    if (circuit.fuse().isEmpty()
        || circuit.load().isEmpty()
        || need.need().kind() == NeedKind.GROUND
        || addedA <= 0) {
      return List.of();
    }
    double roomA =
        HostLimit.of(circuit, order.vehicle(), order.rules()) * circuit.fuse().get().amperes()
            - loadA;
    return List.of(new Use("circuit " + circuit.id(), addedA, roomA, circuit.name()));
  }

  private Way wished(Way way) {
    Way wished = way;
    for (Wish wish : order.kit().wishes()) {
      if (wish.way().equals(way.id())) {
        wished =
            wish.wish() == WishKind.FORBID
                ? wished.forbid("not wanted: " + wish.reason())
                : wished.withOwnCost(wished.ownCost() * PREFERENCE);
      }
    }
    return wished;
  }
}
