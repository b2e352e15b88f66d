package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.FuseForms;
import org.loomwright.planner.sizing.FuseSpot;
import org.loomwright.planner.sizing.Load;

/** Ways that land on the load blade of a fuse slot, alone or shared over a joint. */
final class SlotWays {
  /** A joint may lie this much farther than best if a factory circuit can be met there. */
  private static final double DETOUR = 1.15;

  private final KitOrder order;
  private final Facts facts;
  private final LeadCosts costs;
  private final WayParts parts;

  SlotWays(KitOrder order, Facts facts, LeadCosts costs) {
    this.order = order;
    this.facts = facts;
    this.costs = costs;
    this.parts = new WayParts(order, facts, costs);
  }

  List<Way> of(NeedAt need, PinSide side) {
    List<Way> ways = new ArrayList<>();
    for (FuseBlock block : order.vehicle().fuseBlocks()) {
      for (Slot slot : block.slots()) {
        Section section = block.section(slot.section()).orElse(null);
        if (section == null || !Optional.of(section.feed()).equals(need.need().feed())) {
          continue;
        }
        LeadDraft lead =
            new LeadDraft(
                kind(need), new Touch.AtSlot(block.id(), slot.id(), block.place()), side.touch());
        boolean factory = isFactorySlot(block, slot, side);
        ways.add(
            parts.way(
                need.id() + " > slot " + block.id() + " " + slot.id(),
                need,
                factory ? WayKind.FACTORY_SLOT : WayKind.OTHER_SLOT,
                (factory ? "factory slot " : "slot ") + slot.id() + " of " + block.name(),
                side,
                demands(block, section, slot),
                List.of(lead),
                Load.of(need.need()),
                fuse(block, slot, List.of(need)),
                uses(block, section, need),
                Optional.empty(),
                Optional.empty()));
      }
    }
    return ways;
  }

  /** One fused feed to a joint and a branch from there, for needs that may share. */
  List<Way> shared(NeedAt need, PinSide side, List<NeedAt> group, String joint) {
    List<Way> ways = new ArrayList<>();
    for (FuseBlock block : order.vehicle().fuseBlocks()) {
      Optional<String> place = jointPlace(block, group);
      for (Slot slot : block.slots()) {
        Section section = block.section(slot.section()).orElse(null);
        if (section == null
            || place.isEmpty()
            || !Optional.of(section.feed()).equals(need.need().feed())) {
          continue;
        }
        Touch.AtJoint at = new Touch.AtJoint(joint, place.get());
        LeadDraft trunk =
            new LeadDraft(kind(need), new Touch.AtSlot(block.id(), slot.id(), block.place()), at);
        LeadDraft branch = new LeadDraft(kind(need), at, side.touch());
        ways.add(
            parts.way(
                need.id() + " > shared slot " + block.id() + " " + slot.id(),
                need,
                isFactorySlot(block, slot, side) ? WayKind.FACTORY_SLOT : WayKind.OTHER_SLOT,
                "slot " + slot.id() + " of " + block.name() + ", shared over a joint",
                side,
                demands(block, section, slot),
                List.of(trunk, branch),
                Load.together(group.stream().map(NeedAt::need).toList()),
                fuse(block, slot, group),
                uses(block, section, need),
                Optional.empty(),
                Optional.empty()));
      }
    }
    return ways;
  }

  private List<Demand> demands(FuseBlock block, Section section, Slot slot) {
    Region all = facts.builds().possible();
    String name = "slot " + slot.id() + " of " + block.name();
    return List.of(
        new Demand(
            facts.builds().where(section.fedWhen()),
            section.name() + " of " + block.name() + " is dead"),
        new Demand(facts.builds().where(slot.metalWhen()), name + " has no metal"),
        new Demand(all.minus(facts.taken(block, slot)), name + " is taken"));
  }

  private List<Use> uses(FuseBlock block, Section section, NeedAt need) {
    return List.of(
        new Use(
            "section " + block.id() + " " + section.id(),
            need.currentA(),
            section.limit().amperes() - section.baseLoad().amperes(),
            section.name() + " of " + block.name()));
  }

  private Optional<FuseBefore> fuse(FuseBlock block, Slot slot, List<NeedAt> needs) {
    List<Need> wants = needs.stream().map(NeedAt::need).toList();
    double mostA =
        Math.min(
            slot.maxRating().amperes(),
            wants.stream()
                .flatMap(it -> it.fuseAtMost().stream())
                .mapToDouble(it -> it.amperes())
                .min()
                .orElse(Double.POSITIVE_INFINITY));
    return FuseForms.best(
            order,
            slot.form(),
            FuseSpot.at(order.vehicle(), block.place()),
            Load.together(wants),
            mostA)
        .flatMap(part -> FuseBefore.inSlot(order, block, slot, part));
  }

  private boolean isFactorySlot(FuseBlock block, Slot slot, PinSide side) {
    String cavity =
        side.touch() instanceof Touch.AtCavity at ? at.connector() + " " + at.cavity() : "";
    return order.vehicle().circuits().stream()
        .filter(it -> it.from().equals(new Spot.OfSlot(block.id(), slot.id())))
        .flatMap(it -> it.to().stream())
        .anyMatch(
            spot ->
                spot instanceof Spot.OfCavity of
                    && (of.connector() + " " + of.cavity()).equals(cavity));
  }

  /**
   * The place that makes trunk and branches together shortest; a place at which a factory circuit
   * of the same feed can be met is preferred when it is hardly farther, because the branch can then
   * be spliced there on builds that have that circuit.
   */
  private Optional<String> jointPlace(FuseBlock block, List<NeedAt> group) {
    List<String> met =
        order.vehicle().circuits().stream()
            .filter(it -> it.kind() == CircuitKind.SUPPLY)
            .filter(it -> it.feed().equals(group.get(0).need().feed()))
            .filter(it -> serves(it, group))
            .map(Circuit::reachedAt)
            .flatMap(List::stream)
            .toList();
    double best =
        order.vehicle().places().stream()
            .mapToDouble(it -> total(block, it.id(), group))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    if (Double.isInfinite(best)) {
      return Optional.empty();
    }
    return order.vehicle().places().stream()
        .map(Place::id)
        .filter(it -> total(block, it, group) <= best * (met.contains(it) ? DETOUR : 1) + 1e-6)
        .min(Comparator.comparing((String it) -> !met.contains(it)).thenComparing(it -> it));
  }

  // A circuit that ends at the pin of one of the group is the feed the others can join.
  private static boolean serves(Circuit circuit, List<NeedAt> group) {
    return circuit.to().stream()
        .anyMatch(
            spot ->
                spot instanceof Spot.OfCavity at
                    && group.stream()
                        .anyMatch(
                            need ->
                                need.mount().connector().equals(Optional.of(at.connector()))
                                    && need.pin().cavity().equals(at.cavity())));
  }

  private double total(FuseBlock block, String place, List<NeedAt> group) {
    double total = length(block.place(), place);
    for (NeedAt need : group) {
      total += length(place, need.place());
    }
    return total;
  }

  private double length(String from, String to) {
    return costs.routes().between(from, to).map(Route::lengthMm).orElse(Double.POSITIVE_INFINITY);
  }

  static CircuitKind kind(NeedAt need) {
    return need.need().kind() == NeedKind.GROUND
        ? CircuitKind.GROUND
        : need.need().kind() == NeedKind.SIGNAL ? CircuitKind.SIGNAL : CircuitKind.SUPPLY;
  }
}
