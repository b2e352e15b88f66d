package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.Load;

/** Puts a way together from its leads: demands, undo, cost of work, and the reasons against it. */
final class WayParts {
  // Dearer than any way that passes its checks, so that it is taken only where nothing else is
  // left.
  private static final double LAST_RESORT = 500;

  private final KitOrder order;
  private final Facts facts;
  private final LeadCosts costs;

  WayParts(KitOrder order, Facts facts, LeadCosts costs) {
    this.order = order;
    this.facts = facts;
    this.costs = costs;
  }

  /** Smallest conductor a need asks for, mm². */
  static double leastAreaMm2(NeedAt need) {
    return need.need().leastArea().map(it -> it.areaMm2()).orElse(0.0);
  }

  Way way(
      String id,
      NeedAt need,
      WayKind kind,
      String words,
      PinSide side,
      List<Demand> demands,
      List<LeadDraft> leads,
      Load load,
      Optional<FuseBefore> fuse,
      List<Use> uses,
      Optional<Circuit> host,
      Optional<String> forbidden) {
    List<Demand> all = new ArrayList<>(side.demands());
    all.addAll(demands);
    Region when = facts.builds().possible();
    for (Demand demand : all) {
      when = when.and(demand.holds());
    }
    Undo undo = Undo.EASILY;
    double work = 0;
    Set<String> openings = new LinkedHashSet<>();
    for (LeadDraft lead : leads) {
      undo = Reach.harder(undo, Reach.undo(order.vehicle(), lead.a()));
      undo = Reach.harder(undo, Reach.undo(order.vehicle(), lead.b()));
      work += costs.landingWork(lead.a()) + costs.landingWork(lead.b());
      openings.addAll(Reach.openings(order.vehicle(), lead.a()));
      openings.addAll(Reach.openings(order.vehicle(), lead.b()));
    }
    Optional<String> against =
        forbidden
            .or(() -> side.forbidden().isEmpty() ? Optional.empty() : Optional.of(side.forbidden()))
            .or(() -> impossible(leads, load, fuse));
    Optional<String> weak =
        against.isPresent() || fuse.isEmpty()
            ? Optional.empty()
            : weakness(need, leads, load, fuse.get());
    return new Way(
        id + side.suffix(),
        need,
        kind,
        words,
        all,
        when,
        leads,
        uses,
        List.copyOf(openings),
        weak.isPresent() ? work + LAST_RESORT : work,
        undo,
        host,
        weak,
        against);
  }

  private Optional<String> impossible(List<LeadDraft> leads, Load load, Optional<FuseBefore> fuse) {
    for (LeadDraft lead : leads) {
      if (costs.route(lead).isEmpty()) {
        return Optional.of(
            "no allowed run leads from " + lead.a().place() + " to " + lead.b().place());
      }
      if (costs.largest(lead, load).isEmpty()) {
        return Optional.of("no wire on file fits both ends, " + ends(lead));
      }
    }
    return fuse.isEmpty()
        ? Optional.of("no fuse on file is small enough for the slot and the pin")
        : Optional.empty();
  }

  private Optional<String> weakness(
      NeedAt need, List<LeadDraft> leads, Load load, FuseBefore fuse) {
    double share = 1.0 / Math.max(1, leads.size());
    for (LeadDraft lead : leads) {
      if (costs.wire(lead, load, fuse, leastAreaMm2(need), share).isEmpty()) {
        return Optional.of(
            "no wire on file passes every check, "
                + ends(lead)
                + costs.firstFailing(lead, load, fuse).map(it -> ": " + it).orElse(""));
      }
    }
    return Optional.empty();
  }

  private static String ends(LeadDraft lead) {
    return "from " + lead.a().place() + " to " + lead.b().place();
  }
}
