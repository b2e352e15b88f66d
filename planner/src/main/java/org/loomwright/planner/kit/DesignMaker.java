package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.electrics.Verified;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.watch.PlanPhase;
import org.loomwright.planner.watch.Watch;

/** From the choice to the kit: cases, leads, joints, housings, fuses, part numbers and checks. */
public final class DesignMaker {
  private final KitOrder order;
  private final Facts facts;
  private final Routes routes;

  /** Designs on one vehicle. */
  public DesignMaker(KitOrder order, Facts facts, Routes routes) {
    this.order = order;
    this.facts = facts;
    this.routes = routes;
  }

  /** Designs the kit of a choice. */
  public Made make(Choice choice) {
    return make(choice, false, Watch.NONE);
  }

  /**
   * Designs the kit of a choice.
   *
   * @param verify whether all networks are looked at a second time
   * @param watch is told when leads and sums begin
   */
  public Made make(Choice choice, boolean verify, Watch watch) {
    watch.at(PlanPhase.LEADS);
    List<CaseSet> needed = CaseMaker.of(choice);
    Region served = CaseMaker.served(choice).orElseGet(() -> facts.builds().possible());
    OwnLeads own = new OwnLeads(order, facts, routes, served);
    OwnCases ownCases = new OwnCases(own, needed.size(), served);
    List<CaseSet> sets = new ArrayList<>(needed);
    sets.addAll(ownCases.sets());
    List<Strand> all = new ArrayList<>(StrandMaker.of(needed, routes));
    all.addAll(ownCases.strands());
    PulledTogether tree = PulledTogether.of(order, all, routes);
    List<Strand> strands = tree.strands();
    Feeds feeds = new Feeds(order, strands);
    Ends ends = new Ends(order, facts, sets, strands);
    JointCases joint = new JointCases(needed);
    Evaluator evaluator = new Evaluator(order, strands, joint.all(), feeds.fitted());
    LeadMaker.Leads made = new LeadMaker(order, strands, feeds, ends).make(evaluator);
    watch.at(PlanPhase.SUMS);
    List<Sized> sized = made.leads();
    Map<Strand, String> ids = new LinkedHashMap<>();
    sized.forEach(it -> ids.put(it.strand(), it.lead().id()));
    List<Lead> leads = sized.stream().map(Sized::lead).toList();
    List<Joint> joints = joints(leads);
    List<SuppliedHousing> housings = housings(leads);
    List<FuseFit> fuses = feeds.fits(ids);
    PartsOf parts = new PartsOf(order, sets, joints, housings, fuses);
    List<PartNumber> numbers = new Numbers(order, sets, leads, parts).choose(facts.builds());
    NetworkRecords networks = new NetworkRecords(made.evaluation());
    Harness harness = new HarnessMaker(order, routes.laying(), tree).make(sized);
    List<String> notes = new ArrayList<>(networks.notes());
    notes.addAll(harness.notes());
    List<Check> checks =
        new ArrayList<>(
            new CheckMaker(order, sets, sized, feeds, own.told())
                .make(fuses, made.evaluation(), evaluator.heats(), joint.complete(), harness));
    if (verify) {
      Verified verified = evaluator.verify(made.evaluation());
      notes.add(verified.words());
      checks.add(NetworkChecks.verified(verified));
    }
    return new Made(
        sets,
        new Design(
            leads.stream().map(lead -> parkedOnlyWhereSold(lead, numbers)).toList(),
            joints,
            housings,
            fuses,
            numbers),
        harness,
        checks,
        new DropLimits(order).byCase(made.evaluation()),
        new ProtectionCurves(order, feeds).of(sized),
        networks.states(),
        notes);
  }

  // A case whose part number does not hold a lead has nothing to park.
  private static Lead parkedOnlyWhereSold(Lead lead, List<PartNumber> numbers) {
    Set<String> cases = new LinkedHashSet<>();
    numbers.stream()
        .filter(number -> number.leads().contains(lead.id()))
        .forEach(number -> cases.addAll(number.cases()));
    return lead.withEnds(only(lead.a(), cases), only(lead.b(), cases));
  }

  private static LeadEnd only(LeadEnd end, Set<String> cases) {
    List<EndUse> uses = new ArrayList<>();
    for (EndUse use : end.uses()) {
      List<String> kept = use.cases().stream().filter(cases::contains).toList();
      // How the bench makes the end stays known even if only other numbers land it that way.
      if (!kept.isEmpty() || use.asMade() && use.equals(end.uses().get(0))) {
        uses.add(new EndUse(use.landing(), kept, use.asMade()));
      }
    }
    return new LeadEnd(end.place(), uses);
  }

  private static List<Joint> joints(List<Lead> leads) {
    Map<String, Set<String>> members = new LinkedHashMap<>();
    Map<String, Landing.InJoint> landings = new LinkedHashMap<>();
    Map<String, String> places = new LinkedHashMap<>();
    for (Lead lead : leads) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          if (use.landing() instanceof Landing.InJoint in) {
            members.computeIfAbsent(in.joint(), j -> new LinkedHashSet<>()).add(lead.id());
            landings.put(in.joint(), in);
            places.put(in.joint(), end.place());
          }
        }
      }
    }
    List<Joint> joints = new ArrayList<>();
    landings.forEach(
        (id, landing) ->
            joints.add(
                new Joint(
                    id,
                    places.getOrDefault(id, ""),
                    landing.splice(),
                    List.copyOf(members.getOrDefault(id, Set.of())))));
    return joints;
  }

  private List<SuppliedHousing> housings(List<Lead> leads) {
    Map<String, Set<String>> used = new LinkedHashMap<>();
    for (Lead lead : leads) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          if (use.landing() instanceof Landing.InHousing in) {
            used.computeIfAbsent(in.housing(), h -> new LinkedHashSet<>()).add(in.cavity());
          }
        }
      }
    }
    List<SuppliedHousing> housings = new ArrayList<>();
    for (Mount mount : order.kit().mounts()) {
      String id = mount.equipment() + "/" + mount.plug();
      Set<String> cavities = used.get(id);
      if (cavities == null) {
        continue;
      }
      Plug plug = order.plug(mount).orElseThrow();
      Equipment equipment =
          order.equipment().stream()
              .filter(it -> it.id().equals(mount.equipment()))
              .findFirst()
              .orElseThrow();
      Housing part = order.parts().housing(plug.matesWith()).orElseThrow();
      List<String> plugged =
          part.sealed()
              ? part.cavities().stream()
                  .filter(it -> !it.closed())
                  .map(Cavity::number)
                  .filter(number -> !cavities.contains(number))
                  .toList()
              : List.of();
      housings.add(
          new SuppliedHousing(
              id,
              part.id(),
              Needs.place(order, mount),
              plug.name() + " of " + equipment.name(),
              part.cavities().stream().map(Cavity::number).filter(cavities::contains).toList(),
              plugged));
    }
    return housings;
  }
}
