package org.loomwright.planner.kit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Lead;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Builds;

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
    SolvedKit kit = SolvedKit.of(order);
    return new Kitchen(
        order,
        kit.builds(),
        kit.sets(),
        kit.sizer(),
        kit.chosen(),
        kit.ends(),
        new DesignMaker(order, kit.facts(), kit.routes()).make(kit.choice()));
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
