package org.loomwright.planner.ways;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.sizing.Prices;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/**
 * What a drafted lead would cost: a first estimate with the wire it would need on its own. The
 * final wire is chosen once all leads of a bundle are known.
 */
public final class LeadCosts {
  private final KitOrder order;
  private final Routes routes;
  private final EndParts ends;
  private final WireSizer sizer;
  private final Prices prices;

  /** Costs on one vehicle. */
  public LeadCosts(KitOrder order, Routes routes) {
    this.order = order;
    this.routes = routes;
    this.ends = new EndParts(order);
    this.sizer = new WireSizer(order.parts(), order.rules());
    this.prices = new Prices(order);
  }

  /** The routes. */
  public Routes routes() {
    return routes;
  }

  /** Whether a path leads from one end to the other. */
  public Optional<Route> route(LeadDraft draft) {
    return routes.between(draft.a().place(), draft.b().place());
  }

  /**
   * A wire that would do for the lead alone, empty when nothing on file does.
   *
   * @param share part of the voltage budget the lead may use, 0 to 1
   */
  public Optional<Wire> wire(
      LeadDraft draft, Load load, FuseBefore fuse, double leastAreaMm2, double share) {
    return need(draft, load, fuse, leastAreaMm2, share)
        .flatMap(need -> sizer.smallest(need, wire -> fits(draft, wire, load)));
  }

  /** The largest wire that parts on file take at both ends. */
  public Optional<Wire> largest(LeadDraft draft, Load load) {
    return sizer.wires().stream()
        .filter(wire -> fits(draft, wire, load))
        .max(Comparator.comparingDouble(wire -> wire.size().areaMm2()));
  }

  /** The first check that even the largest fitting wire fails, with its figure. */
  public Optional<String> firstFailing(LeadDraft draft, Load load, FuseBefore fuse) {
    Optional<Wire> wire = largest(draft, load);
    Optional<WireNeed> need = need(draft, load, fuse, 0, 1);
    return wire.isPresent() && need.isPresent()
        ? sizer.firstFailing(wire.get(), need.get())
        : Optional.empty();
  }

  private boolean fits(LeadDraft draft, Wire wire, Load load) {
    double otherMm2 = wire.size().areaMm2();
    return ends.make(draft.a(), wire, load.continuousA(), false, otherMm2).isPresent()
        && ends.make(draft.b(), wire, load.continuousA(), false, otherMm2).isPresent();
  }

  private Optional<WireNeed> need(
      LeadDraft draft, Load load, FuseBefore fuse, double leastAreaMm2, double share) {
    Rules rules = order.rules();
    boolean ground = draft.kind() == CircuitKind.GROUND;
    double supplyV = order.vehicle().supply().volts();
    var budget =
        ground
            ? rules.groundDrop()
            : draft.a() instanceof Touch.AtCircuit ? rules.splicedFeedDrop() : rules.feedDrop();
    var mechanical =
        draft.kind() == CircuitKind.SIGNAL ? rules.leastSignalArea() : rules.leastSupplyArea();
    return route(draft)
        .map(
            route ->
                new WireNeed(
                    ground,
                    load,
                    List.of(fuse),
                    lengthMm(route),
                    lengthMm(route),
                    route.ambientC(),
                    1,
                    Math.max(leastAreaMm2, mechanical.value().areaMm2()),
                    budget.value().fraction() * supplyV * share,
                    supplyV));
  }

  /** Material and bench work of a lead in a given wire. */
  public double cost(LeadDraft draft, Wire wire, Load load) {
    Rules rules = order.rules();
    double metres = route(draft).map(it -> lengthMm(it) / 1000).orElse(0.0);
    double cost = metres * Prices.amount(wire.price());
    double minutes =
        Prices.minutes(rules.cutStripTime().value())
            + Prices.minutes(rules.labelTime().value())
            + Prices.minutes(rules.testTime().value());
    for (Touch touch : new Touch[] {draft.a(), draft.b()}) {
      Optional<Landing> landing =
          ends.make(touch, wire, load.continuousA(), false, wire.size().areaMm2());
      if (landing.isPresent()) {
        cost += prices.parts(landing.get());
        minutes += prices.benchMinutes(landing.get());
      }
    }
    return cost + prices.work(minutes);
  }

  /** Work in the vehicle to land an end that can be reached. */
  public double landingWork(Touch touch) {
    if (touch instanceof Touch.AtJoint || touch instanceof Touch.AtHousing) {
      return 0;
    }
    return prices.work(
        Prices.minutes(
            touch instanceof Touch.AtCircuit
                ? order.rules().spliceTime().value()
                : order.rules().insertTime().value()));
  }

  /** Work to open and close again. */
  public double openingWork(String opening) {
    return prices.work(order.vehicle().opening(opening).map(LeadCosts::openAndClose).orElse(0.0));
  }

  /** Length of a lead over a route: path, slack and service loop at both ends. */
  public double lengthMm(Route route) {
    return route.lengthMm()
        + 2 * order.rules().slackPerEnd().value().mm()
        + 2 * order.rules().serviceLoop().value().mm();
  }

  private static double openAndClose(Opening opening) {
    return Prices.minutes(opening.open()) + Prices.minutes(opening.close());
  }
}
