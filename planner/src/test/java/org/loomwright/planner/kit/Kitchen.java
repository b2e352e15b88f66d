package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Lead;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.choice.ChoiceFinder;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.ways.DraftPrices;
import org.loomwright.planner.ways.LeadCosts;
import org.loomwright.planner.ways.Way;
import org.loomwright.planner.ways.WayFinder;

/**
 * What lies between the choice and the kit, laid open for tests.
 *
 * @param order order
 * @param builds builds
 * @param sets cases
 * @param sizer what the wires are chosen with
 * @param chosen leads with the needs they were sized for
 * @param ends what makes their ends
 * @param made the kit made of them
 */
record Kitchen(
    KitOrder order,
    Builds builds,
    List<CaseSet> sets,
    Sizer sizer,
    LeadMaker.Leads chosen,
    Ends ends,
    Made made) {
  static Kitchen of(KitOrder order) {
    Builds builds = Builds.of(order.vehicle());
    Facts facts = new Facts(order.vehicle(), builds);
    Routes routes = new Routes(order.vehicle());
    LeadCosts costs = new LeadCosts(order, routes);
    List<NeedAt> needs = Needs.of(order);
    Map<NeedAt, List<Way>> ways = new WayFinder(order, facts, costs).find(needs);
    DraftPrices prices = new DraftPrices(order, costs, ways);
    Choice choice =
        new ChoiceFinder(ways, builds.possible(), prices::of, costs::openingWork).find();
    List<CaseSet> sets = CaseMaker.of(choice);
    List<Strand> strands = new ArrayList<>();
    sets.forEach(set -> strands.addAll(StrandMaker.of(set, routes)));
    Feeds feeds = new Feeds(order, strands);
    Ends ends = new Ends(order, facts, sets, strands);
    JointCases joint = new JointCases(sets);
    Evaluator evaluator = new Evaluator(order, strands, joint.all(), feeds.fitted());
    LeadMaker leadMaker = new LeadMaker(order, strands, feeds, ends);
    Sizer sizer = new Sizer(leadMaker, evaluator, strands, joint, feeds);
    return new Kitchen(
        order,
        builds,
        sets,
        sizer,
        leadMaker.make(evaluator),
        ends,
        new DesignMaker(order, facts, routes).make(choice));
  }

  /**
   * What the wires are chosen with.
   *
   * @param leads makes the leads
   * @param evaluator solves the kit
   * @param strands strands in the order of their numbers
   * @param joint cases that stand together
   * @param feeds fuses
   */
  record Sizer(
      LeadMaker leads, Evaluator evaluator, List<Strand> strands, JointCases joint, Feeds feeds) {}

  List<Sized> sized() {
    return chosen.leads();
  }

  /** The leads before parking is limited to the numbers that hold them. */
  List<Lead> leads() {
    return sized().stream().map(Sized::lead).toList();
  }

  Design design() {
    return made.design();
  }

  PartsOf parts() {
    return new PartsOf(order, sets, design().joints(), design().housings(), design().fuses());
  }

  Map<String, CaseSet.Member> members() {
    Map<String, CaseSet.Member> members = new LinkedHashMap<>();
    sets.forEach(set -> set.members().forEach(it -> members.put(it.id(), it)));
    return members;
  }
}
