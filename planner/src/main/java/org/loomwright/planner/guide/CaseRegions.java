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
    for (EndUse use : lead.a().uses()) {
      if (!(use.landing() instanceof Landing.Parked)) {
        any = any.or(of(use.cases()));
      }
    }
    return any;
  }

  /** Builds of some cases whose part number holds the lead, so that it has to be parked there. */
  Region parking(Lead lead, Collection<String> cases) {
    Region any = builds.none();
    for (PartNumber number : design.partNumbers()) {
      if (number.leads().contains(lead.id())) {
        for (String id : cases) {
          if (number.cases().contains(id)) {
            any = any.or(of(List.of(id)));
          }
        }
      }
    }
    return any;
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
}
