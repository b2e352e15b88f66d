package org.loomwright.papers.job;

import java.util.List;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;

/** A plan with nothing left in it but what one vehicle got, so that pictures show just that. */
final class FittedPlan {
  private FittedPlan() {}

  static Plan of(Fitted fitted) {
    Plan plan = fitted.plan();
    List<Lead> leads =
        fitted.leads().stream()
            .map(it -> it.withEnds(end(fitted, it.a()), end(fitted, it.b())))
            .toList();
    Design design = plan.design();
    return new Plan(
        plan.kit(),
        plan.builds(),
        plan.gap(),
        plan.fit(),
        plan.ways(),
        plan.cases().stream().filter(it -> fitted.cases().contains(it.id())).toList(),
        plan.unserved(),
        new Design(leads, fitted.joints(), design.housings(), fitted.fuses(), design.partNumbers()),
        plan.harness(),
        plan.checks(),
        plan.protections(),
        plan.networks(),
        plan.guide(),
        plan.proof(),
        plan.notes());
  }

  /** The end with the one landing it has; it is as made here, however the bench made it. */
  private static LeadEnd end(Fitted fitted, LeadEnd end) {
    return fitted
        .landing(end)
        .map(it -> new LeadEnd(end.place(), List.of(new EndUse(it, fitted.cases(), true))))
        .orElse(end);
  }
}
