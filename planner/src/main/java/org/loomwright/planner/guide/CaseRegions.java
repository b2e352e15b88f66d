package org.loomwright.planner.guide;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.kit.CaseSet;

/** The builds of cases, and of what leads do in them. */
final class CaseRegions {
  private final Builds builds;
  private final Design design;
  private final Map<String, Region> regions = new LinkedHashMap<>();
  private final Region served;
  private final List<List<String>> components;

  CaseRegions(Builds builds, List<CaseSet> sets, Design design) {
    this.builds = builds;
    this.design = design;
    Region all = builds.possible();
    for (CaseSet set : sets) {
      Region any = builds.none();
      for (CaseSet.Member member : set.members()) {
        any = any.or(member.region());
      }
      all = all.and(any);
    }
    served = all;
    components = sets.stream().map(CaseSet::ids).toList();
    for (CaseSet set : sets) {
      for (CaseSet.Member member : set.members()) {
        regions.put(member.id(), member.region().and(served));
      }
    }
  }

  /** Builds for which every component has a case. */
  Region served() {
    return served;
  }

  /** Regions of all cases. */
  Collection<Region> all() {
    return regions.values();
  }

  /** Builds that have one of the cases. */
  Region of(Collection<String> cases) {
    Region any = builds.none();
    for (String id : cases) {
      any = any.or(regions.getOrDefault(id, builds.none()));
    }
    return any;
  }

  /** Builds on which a lead is used. */
  Region using(Lead lead) {
    Region any = builds.none();
    for (LeadEnd end : List.of(lead.a(), lead.b())) {
      for (EndUse use : end.uses()) {
        if (use.asMade() || !(use.landing() instanceof Landing.Parked)) {
          any = any.or(of(use.cases()));
        }
      }
    }
    return any;
  }

  /** Builds of some cases whose part number holds the lead, so that it has to be parked there. */
  Region parking(Lead lead, Collection<String> cases) {
    Region any = builds.none();
    for (PartNumber number : design.partNumbers()) {
      if (number.leads().contains(lead.id())) {
        List<String> served = cases.stream().filter(number.cases()::contains).toList();
        any = any.or(of(served).and(sold(number)));
      }
    }
    return any;
  }

  // A case can be served by several numbers: on these builds it is this one.
  private Region sold(PartNumber number) {
    Region sold = served;
    for (List<String> ids : components) {
      sold = sold.and(of(ids.stream().filter(number.cases()::contains).toList()));
    }
    return sold;
  }

  /** Whether another lead of a joint is in use in some of the cases in which this one is parked. */
  boolean jointUsed(Landing.InJoint joint, EndUse parked) {
    for (Lead lead : design.leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          if (use.landing().equals(joint)
              && use.cases().stream().anyMatch(parked.cases()::contains)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * Whether the bench can put an end into its cavity of a housing of the kit. It can't where
   * another lead in the same box wants the cavity, where some vehicle has a connector of its own
   * for the end, or where the housing is used without the end.
   */
  boolean filledOnBench(Lead lead, LeadEnd end, Landing.InHousing in) {
    return design.partNumbers().stream()
        .filter(number -> number.leads().contains(lead.id()))
        .allMatch(number -> filledOnBench(number, end, in));
  }

  private boolean filledOnBench(PartNumber number, LeadEnd end, Landing.InHousing in) {
    int wanting = 0;
    Region used = builds.none();
    for (Lead other : design.leads()) {
      for (LeadEnd it : List.of(other.a(), other.b())) {
        for (EndUse use : it.uses()) {
          List<String> cases = sold(use, number);
          if (use.landing() instanceof Landing.InHousing there
              && there.housing().equals(in.housing())
              && number.leads().contains(other.id())
              && !cases.isEmpty()) {
            wanting += there.cavity().equals(in.cavity()) ? 1 : 0;
            used = used.or(of(cases));
          }
        }
      }
    }
    if (wanting > 1) {
      return false;
    }
    for (EndUse use : end.uses()) {
      List<String> cases = sold(use, number);
      boolean elsewhere = !use.landing().equals(in) && !cases.isEmpty();
      if (elsewhere && (!(use.landing() instanceof Landing.Parked) || of(cases).meets(used))) {
        return false;
      }
    }
    return true;
  }

  private static List<String> sold(EndUse use, PartNumber number) {
    return use.cases().stream().filter(number.cases()::contains).toList();
  }
}
