package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.physics.Check;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;
import org.loomwright.planner.ways.Demand;
import org.loomwright.planner.ways.LeadDraft;

/**
 * The leads of the user's own as they can be made: on which builds each ends where. A lead that no
 * wire on file can be is left out, and where an end can't be landed on a build the lead is parked
 * there; both are told.
 */
final class OwnLeads {
  private final KitOrder order;
  private final Facts facts;
  private final Routes routes;
  private final Region served;
  private final OwnEnds ends;
  private final EndParts parts;
  private final WireSizer sizer;
  private final List<Placed> placed = new ArrayList<>();
  private final List<Told> told = new ArrayList<>();

  /**
   * A lead on the builds that use it.
   *
   * @param lead the lead as ordered
   * @param route its way by itself
   * @param sides where it ends, on builds that exclude one another; at least one
   */
  record Placed(OwnLead lead, Route route, List<Side> sides) {
    Placed {
      sides = List.copyOf(sides);
    }
  }

  /**
   * Where a lead ends on some builds.
   *
   * @param region builds, at least one
   * @param draft both ends
   * @param demands what landing it there rests on
   */
  record Side(Region region, LeadDraft draft, List<Demand> demands) {
    Side {
      demands = List.copyOf(demands);
    }
  }

  /**
   * How an order for a lead stands.
   *
   * @param lead the lead
   * @param sort short name of the check
   * @param name what was looked at
   * @param figure figure
   * @param limit limit, which the figure must not exceed
   * @param unit unit of both
   * @param source what it rests on, with the reasons where it is not so
   */
  record Told(
      OwnLead lead,
      String sort,
      String name,
      double figure,
      double limit,
      String unit,
      String source) {}

  /**
   * Places all own leads of an order.
   *
   * @param served builds that the kit is sold to; all possible ones where it is sold to none
   */
  OwnLeads(KitOrder order, Facts facts, Routes routes, Region served) {
    this.order = order;
    this.facts = facts;
    this.routes = routes;
    this.served = served;
    this.ends = new OwnEnds(order, facts);
    this.parts = new EndParts(order);
    this.sizer = new WireSizer(order.parts(), order.rules());
    order.kit().ownLeads().forEach(this::place);
  }

  /** Leads that can be made, in the order of the kit. */
  List<Placed> placed() {
    return placed;
  }

  /** How each order stands, in the order of the kit. */
  List<Told> told() {
    return told;
  }

  /** Whether a wire is one that the order of a lead allows. */
  static boolean allows(OwnLead lead, Wire wire) {
    return lead.size().filter(it -> Math.abs(it.areaMm2() - wire.size().areaMm2()) > 1e-6).isEmpty()
        && lead.colour().filter(it -> !wire.colours().contains(it)).isEmpty();
  }

  /** Least conductor of a lead for which no size is asked, mm²; 0 where one is. */
  static double leastAreaMm2(KitOrder order, OwnLead lead) {
    return lead.size().isPresent() ? 0 : order.rules().leastSignalArea().value().areaMm2();
  }

  private void place(OwnLead lead) {
    Region wanted = facts.builds().where(lead.when()).and(served);
    List<Side> sides = sides(lead, wanted);
    Region landed = sides.stream().map(Side::region).reduce(facts.builds().none(), Region::or);
    Region missing = wanted.minus(landed);
    told.add(
        new Told(
            lead,
            "use",
            "builds that are to use the lead and can't",
            missing.count().doubleValue() + (wanted.isEmpty() ? 1 : 0),
            0,
            "builds",
            missing.isEmpty() && !wanted.isEmpty() ? "kit document" : reasons(lead, missing)));
    if (sides.isEmpty()) {
      return;
    }
    LeadDraft first = sides.get(0).draft();
    Optional<Route> route = routes.between(first.a().place(), first.b().place());
    if (route.isEmpty()) {
      lacking(
          lead,
          "ways for the lead",
          "no allowed run leads from " + first.a().place() + " to " + first.b().place());
      return;
    }
    List<Wire> fitting = sizer.wires().stream().filter(wire -> fits(lead, wire, sides)).toList();
    if (fitting.isEmpty()) {
      lacking(lead, "wires for the lead", noWire(lead, sides));
      return;
    }
    if (carries(lead, fitting, route.get())) {
      placed.add(new Placed(lead, route.get(), sides));
    }
  }

  private void lacking(OwnLead lead, String name, String why) {
    told.add(new Told(lead, "made", name + " that are missing", 1, 0, "pc", why));
  }

  private List<Side> sides(OwnLead lead, Region wanted) {
    CircuitKind kind =
        lead.from() instanceof OwnEnd.OfGround || lead.to() instanceof OwnEnd.OfGround
            ? CircuitKind.GROUND
            : CircuitKind.SIGNAL;
    List<Side> sides = new ArrayList<>();
    for (OwnEnds.Option a : ends.of(lead.from())) {
      for (OwnEnds.Option b : ends.of(lead.to())) {
        Region on = b.on(a.on(wanted));
        if (!on.isEmpty()) {
          List<Demand> demands = new ArrayList<>(a.demands());
          demands.addAll(b.demands());
          sides.add(new Side(on, new LeadDraft(kind, a.touch(), b.touch()), demands));
        }
      }
    }
    return sides;
  }

  private String reasons(OwnLead lead, Region missing) {
    if (missing.isEmpty()) {
      return "no build that the kit is sold to meets the condition";
    }
    Set<String> reasons = new LinkedHashSet<>();
    for (OwnEnd end : List.of(lead.from(), lead.to())) {
      Set<String> here = new LinkedHashSet<>();
      Region never = missing;
      for (OwnEnds.Option option : ends.of(end)) {
        never = never.minus(option.on(missing));
        for (Demand demand : option.demands()) {
          if (!missing.within(demand.holds())) {
            here.add(demand.otherwise());
          }
        }
      }
      if (!never.isEmpty()) {
        reasons.addAll(here);
      }
    }
    return "on builds with "
        + Described.of(missing).words()
        + ": "
        + String.join("; ", reasons)
        + "; say in 'when' on which builds it is used, or take another end";
  }

  private boolean fits(OwnLead lead, Wire wire, List<Side> sides) {
    return allows(lead, wire) && touches(sides).stream().allMatch(it -> fits(lead, wire, it));
  }

  private boolean fits(OwnLead lead, Wire wire, Touch touch) {
    return parts.make(touch, wire, lead.current().amperes(), false, 0).isPresent();
  }

  private static List<Touch> touches(List<Side> sides) {
    return sides.stream()
        .flatMap(side -> Stream.of(side.draft().a(), side.draft().b()))
        .distinct()
        .toList();
  }

  // Which end takes what, since the cause is mostly two ends that have no size in common.
  private String noWire(OwnLead lead, List<Side> sides) {
    List<String> ends = new ArrayList<>();
    for (Touch touch : touches(sides)) {
      List<String> sizes =
          sizer.wires().stream()
              .filter(wire -> allows(lead, wire) && fits(lead, wire, touch))
              .map(wire -> wire.size().text())
              .distinct()
              .toList();
      ends.add(
          touch.key() + (sizes.isEmpty() ? " takes none" : " takes " + String.join(", ", sizes)));
    }
    return "no wire on file of this size and colour, with the terminals, seals and rings on file,"
        + " does at both ends for "
        + lead.current().text()
        + ": "
        + String.join("; ", ends);
  }

  // A lead that by itself is overloaded would heat the others of its bundle beyond all sense, so it
  // is not made.
  private boolean carries(OwnLead lead, List<Wire> fitting, Route route) {
    WireNeed need =
        new WireNeed(
            false,
            new Load(lead.current().amperes(), 0, 0),
            List.of(),
            route.lengthMm(),
            0,
            route.ambientC(),
            1,
            leastAreaMm2(order, lead),
            Double.POSITIVE_INFINITY,
            order.vehicle().supply().volts());
    if (sizer.smallest(need, fitting::contains).isPresent()) {
      return true;
    }
    Wire largest =
        fitting.stream().max(Comparator.comparingDouble(it -> it.size().areaMm2())).orElseThrow();
    Optional<Check> check =
        largest.rating().celsius() > route.ambientC()
            ? sizer.protection(largest, need).checks().stream().findFirst()
            : Optional.empty();
    told.add(
        new Told(
            lead,
            "made",
            "current of the lead, with the largest wire on file that it can be",
            lead.current().amperes(),
            check.map(Check::limit).orElse(0.0),
            "A",
            check
                .map(it -> it.rule() + "; " + it.source())
                .orElse("the insulation bears no more than the ambient")));
    return false;
  }
}
