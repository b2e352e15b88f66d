package org.loomwright.planner.kit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.SundryUse;
import org.loomwright.model.rules.Rules;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.sizing.Prices;

/**
 * Parts and bench minutes of a set of leads: what the bench makes, and for each component the most
 * that any of its cases needs in the vehicle (fuses, splices, caps, new terminals).
 */
final class PartsOf {
  private final KitOrder order;
  private final List<Joint> joints;
  private final List<SuppliedHousing> housings;
  private final List<FuseFit> fuses;
  private final Map<String, CaseSet> sets;
  private final EndParts ends;
  private final Prices prices;
  private final BundleMaker bundleMaker;

  PartsOf(
      KitOrder order,
      List<CaseSet> sets,
      List<Joint> joints,
      List<SuppliedHousing> housings,
      List<FuseFit> fuses) {
    this.order = order;
    this.joints = joints;
    this.housings = housings;
    this.fuses = fuses;
    this.ends = new EndParts(order);
    this.prices = new Prices(order);
    this.bundleMaker = new BundleMaker(order);
    this.sets = new HashMap<>();
    sets.forEach(set -> this.sets.put(set.letter(), set));
  }

  /**
   * All parts of a part number.
   *
   * @param leads its leads
   * @param cases the cases it serves
   */
  PartsCount count(List<Lead> leads, Set<String> cases) {
    PartsCount count = new PartsCount();
    Set<String> ids = new HashSet<>();
    for (Lead lead : leads) {
      ids.add(lead.id());
      count.metres(lead.wire(), lead.cutMm() / 1000);
      benchEnd(lead.a(), count);
      benchEnd(lead.b(), count);
      label(count);
      label(count);
    }
    for (Joint joint : joints) {
      if (joint.leads().stream().anyMatch(ids::contains)) {
        count.piece(joint.splice());
      }
    }
    for (SuppliedHousing housing : housings) {
      if (leads.stream().anyMatch(lead -> fills(lead, housing.id(), cases))) {
        housing(housing, count);
      }
    }
    bundles(leads, count);
    sets.values().stream()
        .sorted(Comparator.comparing(CaseSet::letter))
        .forEach(set -> count.add(site(set, leads, cases)));
    return count;
  }

  /** Bench minutes of a part number. */
  double benchMinutes(List<Lead> leads) {
    Rules rules = order.rules();
    double minutes = 0;
    Set<String> ids = new HashSet<>();
    for (Lead lead : leads) {
      ids.add(lead.id());
      minutes +=
          Prices.minutes(rules.cutStripTime().value())
              + Prices.minutes(rules.testTime().value())
              + 2 * Prices.minutes(rules.labelTime().value())
              + prices.benchMinutes(lead.a().asMade())
              + prices.benchMinutes(lead.b().asMade());
    }
    for (Joint joint : joints) {
      if (joint.leads().stream().anyMatch(ids::contains)) {
        minutes += Prices.minutes(rules.spliceTime().value());
      }
    }
    return minutes;
  }

  // A bare end is spliced in the vehicle; its splice is counted with the case.
  private static void benchEnd(LeadEnd end, PartsCount count) {
    if (!(end.asMade() instanceof Landing.IntoCircuit)) {
      count.landing(end.asMade());
    }
  }

  private PartsCount site(CaseSet set, List<Lead> leads, Set<String> cases) {
    PartsCount most = new PartsCount();
    for (String caseId : set.ids()) {
      if (!cases.contains(caseId)) {
        continue;
      }
      PartsCount here = new PartsCount();
      for (Lead lead : leads) {
        if (lead.component().equals(set.letter())) {
          siteEnd(lead.a(), caseId, here);
          siteEnd(lead.b(), caseId, here);
        }
      }
      for (FuseFit fuse : fuses) {
        if (fuse.cases().contains(caseId)) {
          here.piece(fuse.part());
        }
      }
      most.most(here);
    }
    return most;
  }

  private static void siteEnd(LeadEnd end, String caseId, PartsCount count) {
    for (EndUse use : end.uses()) {
      boolean splice = use.landing() instanceof Landing.IntoCircuit;
      // A loose end has its cap from the bench.
      boolean already = !splice && use.landing().equals(end.asMade());
      if (use.cases().contains(caseId) && !already && (!use.asMade() || splice)) {
        count.landing(use.landing());
      }
    }
  }

  // A number for vehicles that have the connector brings none.
  private static boolean fills(Lead lead, String housing, Set<String> cases) {
    return Stream.of(lead.a(), lead.b())
        .flatMap(end -> end.uses().stream())
        .anyMatch(
            use ->
                use.landing() instanceof Landing.InHousing in
                    && in.housing().equals(housing)
                    && use.cases().stream().anyMatch(cases::contains));
  }

  private void housing(SuppliedHousing supplied, PartsCount count) {
    count.piece(supplied.part());
    Housing housing = order.parts().housing(supplied.part()).orElseThrow();
    for (String number : supplied.plugged()) {
      housing.cavity(number).flatMap(Cavity::plug).ifPresent(count::piece);
    }
  }

  private void label(PartsCount count) {
    ends.sundry(SundryUse.LABEL).ifPresent(it -> count.piece(it.id()));
  }

  // What the bundles of these leads are covered with, held by and led through.
  private void bundles(List<Lead> leads, PartsCount count) {
    for (Bundle bundle : bundleMaker.of(leads)) {
      bundle.covering().ifPresent(it -> count.metres(it.part(), it.lengthMm() / 1000));
      bundle.clips().ifPresent(it -> count.pieces(it.part(), it.count()));
      bundle.passages().stream().flatMap(it -> it.grommet().stream()).forEach(count::piece);
    }
  }
}
