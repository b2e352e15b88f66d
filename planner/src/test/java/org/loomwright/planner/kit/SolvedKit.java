package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.choice.ChoiceFinder;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.JointCase;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.ways.DraftPrices;
import org.loomwright.planner.ways.LeadCosts;
import org.loomwright.planner.ways.Way;
import org.loomwright.planner.ways.WayFinder;

/** A kit up to the leads with their wires, and the networks solved on the way, for tests. */
public final class SolvedKit {
  private final KitOrder order;
  private final Builds builds;
  private final Facts facts;
  private final Routes routes;
  private final Choice choice;
  private final List<CaseSet> sets;
  private final Kitchen.Sizer sizer;
  private final Ends ends;
  private final LeadMaker.Leads chosen;

  /**
   * A joint case as it came out.
   *
   * @param joint its ways and leads
   * @param figures its figures
   */
  public record Case(JointCase joint, CaseFigures figures) {}

  private SolvedKit(KitOrder order) {
    this.order = order;
    this.builds = Builds.of(order.vehicle());
    this.facts = new Facts(order.vehicle(), builds);
    this.routes = new Routes(order.vehicle(), order.rules());
    this.choice = choice(order, facts, routes);
    this.sets = CaseMaker.of(choice);
    List<Strand> strands = PulledTogether.of(order, StrandMaker.of(sets, routes), routes).strands();
    Feeds feeds = new Feeds(order, strands);
    this.ends = new Ends(order, facts, sets, strands);
    JointCases joint = new JointCases(sets);
    Evaluator evaluator = new Evaluator(order, strands, joint.all(), feeds.fitted());
    LeadMaker leadMaker = new LeadMaker(order, strands, feeds, ends);
    this.sizer = new Kitchen.Sizer(leadMaker, evaluator, strands, joint, feeds);
    this.chosen = leadMaker.make(evaluator);
  }

  private static Choice choice(KitOrder order, Facts facts, Routes routes) {
    LeadCosts costs = new LeadCosts(order, routes);
    Map<NeedAt, List<Way>> ways = new WayFinder(order, facts, costs).find(Needs.of(order));
    DraftPrices prices = new DraftPrices(order, costs, ways);
    return new ChoiceFinder(ways, facts.builds().possible(), prices::of, costs::openingWork).find();
  }

  /** The cases of a kit alone. */
  static List<CaseSet> sets(KitOrder order, Builds builds) {
    Facts facts = new Facts(order.vehicle(), builds);
    return CaseMaker.of(choice(order, facts, new Routes(order.vehicle(), order.rules())));
  }

  /** Solves a kit. */
  public static SolvedKit of(KitOrder order) {
    return new SolvedKit(order);
  }

  /** The order. */
  public KitOrder order() {
    return order;
  }

  /** All joint cases. */
  public List<Case> cases() {
    return chosen.evaluation().cases().stream()
        .map(it -> new Case(it.joint(), it.figures()))
        .toList();
  }

  /** Figures of a need in the only joint case it has. */
  NeedFigures figures(String need) {
    List<NeedFigures> all = new ArrayList<>();
    for (Case one : cases()) {
      one.figures()
          .needs()
          .forEach(
              (at, figures) -> {
                if (at.id().equals(need)) {
                  all.add(figures);
                }
              });
    }
    if (all.size() != 1) {
      throw new IllegalStateException(all.size() + " joint cases have " + need);
    }
    return all.get(0);
  }

  Builds builds() {
    return builds;
  }

  Facts facts() {
    return facts;
  }

  Routes routes() {
    return routes;
  }

  Choice choice() {
    return choice;
  }

  List<CaseSet> sets() {
    return sets;
  }

  Kitchen.Sizer sizer() {
    return sizer;
  }

  Ends ends() {
    return ends;
  }

  LeadMaker.Leads chosen() {
    return chosen;
  }
}
