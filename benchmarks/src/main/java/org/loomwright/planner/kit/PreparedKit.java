package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.choice.ChoiceFinder;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.ways.DraftPrices;
import org.loomwright.planner.ways.LeadCosts;
import org.loomwright.planner.ways.Way;
import org.loomwright.planner.ways.WayFinder;

/**
 * A kit up to where its wires are chosen.
 *
 * @param order order
 * @param strands leads without wires
 * @param joint cases that stand together
 * @param feeds fuses
 * @param ends what makes the ends
 * @param maker makes the leads
 * @param needs what each lead has to bear
 */
record PreparedKit(
    KitOrder order,
    List<Strand> strands,
    JointCases joint,
    Feeds feeds,
    Ends ends,
    LeadMaker maker,
    Map<Strand, WireNeed> needs) {
  static PreparedKit of(KitOrder order) {
    Builds builds = Builds.of(order.vehicle());
    Facts facts = new Facts(order.vehicle(), builds);
    Routes routes = new Routes(order.vehicle(), order.rules());
    LeadCosts costs = new LeadCosts(order, routes);
    Map<NeedAt, List<Way>> ways = new WayFinder(order, facts, costs).find(Needs.of(order));
    DraftPrices prices = new DraftPrices(order, costs, ways);
    Choice choice =
        new ChoiceFinder(ways, builds.possible(), prices::of, costs::openingWork).find();
    List<CaseSet> sets = CaseMaker.of(choice);
    List<Strand> strands = PulledTogether.of(order, StrandMaker.of(sets, routes), routes).strands();
    Feeds feeds = new Feeds(order, strands);
    Ends ends = new Ends(order, facts, sets, strands);
    LeadMaker maker = new LeadMaker(order, strands, feeds, ends);
    return new PreparedKit(order, strands, new JointCases(sets), feeds, ends, maker, maker.needs());
  }

  /** Knows nothing yet. */
  Evaluator evaluator() {
    return new Evaluator(order, strands, joint.all(), feeds.fitted());
  }

  /** The planner's search, knowing nothing yet. */
  Sizing.Result sized() {
    return maker.sizing(needs, evaluator()).size();
  }

  /** Copper of all leads, mm² times m. */
  double copper(Map<Strand, Wire> wires) {
    double sum = 0;
    for (Strand strand : strands) {
      Wire wire = wires.get(strand);
      WireNeed need = needs.get(strand);
      if (wire == null || need == null) {
        throw new IllegalStateException("a lead without a wire");
      }
      sum += wire.size().areaMm2() * need.lengthMm() / 1000;
    }
    return sum;
  }
}
