package org.loomwright.planner.ways;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.quantity.Current;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.FuseForms;
import org.loomwright.planner.sizing.FuseSpot;
import org.loomwright.planner.sizing.Load;

/** Estimated cost of each drafted lead, for the needs that may use it together. */
public final class DraftPrices {
  /** Where no blade is on file, an estimate with a large one. */
  private static final Current LARGE = Current.of("30 A");

  private final KitOrder order;
  private final LeadCosts costs;
  private final Map<String, Set<Need>> needs = new HashMap<>();
  private final Map<String, Double> known = new HashMap<>();

  /** Prices for all ways found. */
  public DraftPrices(KitOrder order, LeadCosts costs, Map<NeedAt, List<Way>> ways) {
    this.order = order;
    this.costs = costs;
    ways.values()
        .forEach(
            all ->
                all.forEach(
                    way ->
                        way.leads()
                            .forEach(
                                lead ->
                                    needs
                                        .computeIfAbsent(lead.key(), k -> new LinkedHashSet<>())
                                        .add(way.need().need()))));
  }

  /** Cost of a lead, in the shop's currency. */
  public double of(LeadDraft lead) {
    return known.computeIfAbsent(lead.key(), key -> price(lead));
  }

  private double price(LeadDraft lead) {
    Load load = Load.together(needs.getOrDefault(lead.key(), Set.of()));
    FuseSpot spot = FuseSpot.at(order.vehicle(), lead.a().place());
    Current rating =
        FuseForms.best(order, "blade", spot, load, Double.POSITIVE_INFINITY)
            .map(Fuse::rating)
            .orElse(LARGE);
    FuseBefore fuse = FuseBefore.guess(order, rating, spot);
    return costs
        .wire(lead, load, fuse, 0, 1)
        .map(wire -> costs.cost(lead, wire, load))
        // The way that brings it was found possible in its own terms; only the estimate is missing.
        .orElseGet(
            () ->
                order.parts().wires().stream()
                    .mapToDouble(wire -> costs.cost(lead, wire, load))
                    .max()
                    .orElse(0));
  }
}
