package org.loomwright.planner.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.choice.ChoiceFinder;
import org.loomwright.planner.guide.GuideMaker;
import org.loomwright.planner.kit.CaseSet;
import org.loomwright.planner.kit.DesignMaker;
import org.loomwright.planner.kit.Made;
import org.loomwright.planner.need.Already;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.GapFinder;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.proof.ProofMaker;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.watch.PlanPhase;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.watch.Watch;
import org.loomwright.planner.ways.DraftPrices;
import org.loomwright.planner.ways.LeadCosts;
import org.loomwright.planner.ways.Way;
import org.loomwright.planner.ways.WayFinder;

/** From an order to a plan: gap, ways, choice, kit, checks, guide, proof. */
public final class Planner {
  // What a reader should know of how far the figures go.
  private static final List<String> NOTES =
      List.of(
          "Part numbers: one for all and every division by one component's cases were compared.",
          "Question order: exact within phases of up to five questions, beyond that by effort.");

  private final KitOrder order;
  private final Builds builds;
  private final Facts facts;
  private final List<NeedAt> needs;

  private Planner(KitOrder order) {
    this.order = order;
    this.builds = Builds.of(order.vehicle());
    this.facts = new Facts(order.vehicle(), builds);
    this.needs = Needs.of(order);
  }

  /**
   * Plans a kit. Same order, same plan.
   *
   * @throws ImpossibleVehicle when the vehicle's rules leave no build
   */
  public static Plan plan(KitOrder order) {
    return plan(order, Watch.NONE);
  }

  /**
   * Plans a kit under the eyes of another. Same order, same plan.
   *
   * @param watch is told what planning is at
   * @throws ImpossibleVehicle when the vehicle's rules leave no build
   * @throws org.loomwright.planner.watch.PlanningStopped when the thread is interrupted meanwhile
   */
  public static Plan plan(KitOrder order, Watch watch) {
    watch.at(PlanPhase.BUILDS);
    return new Planner(order).run(false, watch);
  }

  /**
   * Plans a kit and looks at every network it rests on a second time: each state with a worst
   * figure is solved again, checked by an independent checker and compared. What that finds is a
   * check of the plan, "network/verify".
   *
   * @throws ImpossibleVehicle when the vehicle's rules leave no build
   */
  public static Plan verified(KitOrder order) {
    return new Planner(order).run(true, Watch.NONE);
  }

  private Plan run(boolean verify, Watch watch) {
    if (builds.possible().isEmpty()) {
      throw new ImpossibleVehicle(order.vehicle());
    }
    begin(watch, PlanPhase.GAP);
    List<NeedGap> gaps = gaps();
    begin(watch, PlanPhase.WAYS);
    Routes routes = new Routes(order.vehicle(), order.rules());
    LeadCosts costs = new LeadCosts(order, routes);
    Map<NeedAt, List<Way>> ways = new WayFinder(order, facts, costs).find(needs);
    DraftPrices prices = new DraftPrices(order, costs, ways);
    begin(watch, PlanPhase.CHOICE);
    Choice choice =
        new ChoiceFinder(ways, builds.possible(), prices::of, costs::openingWork).find();
    Made made = new DesignMaker(order, facts, routes).make(choice, verify, watch);
    begin(watch, PlanPhase.GUIDE);
    Guide guide = GuideMaker.of(order, facts, made);
    List<Case> cases =
        made.sets().stream()
            .flatMap(set -> set.members().stream())
            .map(CaseSet.Member::info)
            .toList();
    begin(watch, PlanPhase.PROOF);
    Proof proof = ProofMaker.prove(order, cases, made.design(), guide, PlanningStopped::ifAsked);
    return new Plan(
        order.kit(),
        new BuildCount(
            builds.possible().count(),
            builds.traits().size(),
            choice.components().size(),
            choice.groups()),
        gaps,
        fit(),
        wayLines(ways, made, prices, costs),
        cases,
        choice.unserved(),
        made.design(),
        made.harness(),
        made.checks(),
        made.protections(),
        made.networks(),
        guide,
        proof,
        Stream.concat(made.notes().stream(), NOTES.stream()).toList());
  }

  private static void begin(Watch watch, PlanPhase phase) {
    PlanningStopped.ifAsked();
    watch.at(phase);
  }

  private List<NeedGap> gaps() {
    SortedSet<String> unknown = new TreeSet<>();
    for (Trait trait : order.vehicle().traits()) {
      // Only unknown facts get a name with a slash; see KnownVehicle.
      if (trait.id().contains("/")) {
        unknown.add(trait.id());
      }
    }
    GapFinder finder = new GapFinder(facts, unknown);
    return needs.stream()
        .map(need -> finder.of(need, Already.of(need, facts, order.rules())))
        .toList();
  }

  private Fit fit() {
    List<String> modules = new ArrayList<>();
    List<String> coding = new ArrayList<>();
    for (Equipment equipment : order.equipment()) {
      equipment.modules().forEach(demand -> demand(equipment, demand, modules));
      equipment.coding().forEach(demand -> demand(equipment, demand, coding));
    }
    return new Fit(modules, coding);
  }

  private void demand(Equipment equipment, Demand demand, List<String> lines) {
    Region asking = builds.possible().minus(builds.where(demand.metWhen()));
    if (!asking.isEmpty()) {
      lines.add(
          equipment.name() + ": " + demand.what() + " (" + Described.of(asking).words() + ")");
    }
  }

  // What the way costs on its own: its leads, its openings and its work in the vehicle.
  private static double cost(Way way, DraftPrices prices, LeadCosts costs) {
    return way.ownCost()
        + way.leads().stream().mapToDouble(prices::of).sum()
        + way.openings().stream().mapToDouble(costs::openingWork).sum();
  }

  private static List<WayLine> wayLines(
      Map<NeedAt, List<Way>> ways, Made made, DraftPrices prices, LeadCosts costs) {
    Map<String, List<String>> used = new LinkedHashMap<>();
    for (CaseSet set : made.sets()) {
      for (CaseSet.Member member : set.members()) {
        for (Way way : member.ways().values()) {
          used.computeIfAbsent(way.id(), id -> new ArrayList<>()).add(member.id());
        }
      }
    }
    List<WayLine> lines = new ArrayList<>();
    for (List<Way> all : ways.values()) {
      for (Way way : all) {
        List<String> uses = new ArrayList<>();
        way.leads().forEach(lead -> uses.add(lead.key()));
        way.uses().forEach(use -> uses.add(use.words()));
        lines.add(
            new WayLine(
                way.id(),
                way.need().id(),
                way.kind(),
                way.words(),
                Described.of(way.when()).when(),
                way.when().count(),
                cost(way, prices, costs),
                way.undo(),
                uses,
                way.forbidden().or(way::weak),
                used.getOrDefault(way.id(), List.of())));
      }
    }
    return lines;
  }
}
