package org.loomwright.planner.ways;

import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.route.Routes;
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
      LeadDraft draft, Load load, Fuse fuse, double leastAreaMm2, double share) {
    Optional<Route> route = route(draft);
    if (route.isEmpty()) {
      return Optional.empty();
    }
    Rules rules = order.rules();
    double supplyV = order.vehicle().supply().volts();
    double budget =
        (draft.kind() == CircuitKind.GROUND
                    ? rules.groundDrop()
                    : draft.a() instanceof Touch.AtCircuit
                        ? rules.splicedFeedDrop()
                        : rules.feedDrop())
                .value()
                .fraction()
            * supplyV
            * share;
    double least =
        Math.max(
            leastAreaMm2,
            (draft.kind() == CircuitKind.SIGNAL ? rules.leastSignalArea() : rules.leastSupplyArea())
                .value()
                .areaMm2());
    WireNeed need =
        new WireNeed(
            draft.kind() == CircuitKind.GROUND,
            load,
            fuse,
            lengthMm(route.get()),
            lengthMm(route.get()),
            route.get().ambientC(),
            1,
            least,
            budget,
            supplyV);
    return sizer.smallest(
        need,
        wire ->
            ends.make(draft.a(), wire, load.continuousA(), false, wire.size().areaMm2()).isPresent()
                && ends.make(draft.b(), wire, load.continuousA(), false, wire.size().areaMm2())
                    .isPresent());
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
