package org.loomwright.planner.proof;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Opening;

/**
 * Every caution that an act or a place calls for is given before it: "caution/general" before the
 * first act, "caution/battery" before the battery is disconnected, "caution/restraint" before an
 * opening that has airbag or pretensioner parts within reach, and an opening's own caution with or
 * before the step that opens it.
 */
final class Cautions implements StepCheck {
  static final String GENERAL = "caution/general";
  static final String BATTERY = "caution/battery";
  static final String RESTRAINT = "caution/restraint";

  private final Subject subject;

  Cautions(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    if (step.act().isEmpty()) {
      return;
    }
    given(GENERAL, step, here, progress, findings);
    if (step.act().get() instanceof Act.Isolate) {
      given(BATTERY, step, here, progress, findings);
    }
    if (step.act().get() instanceof Act.Open open) {
      subject
          .vehicle()
          .opening(open.opening())
          .ifPresent(opening -> opened(opening, step, here, progress, findings));
    }
  }

  private void opened(
      Opening opening, Step step, Region here, Progress progress, Findings findings) {
    if (opening.restraint()) {
      given(RESTRAINT, step, here, progress, findings);
      boolean names =
          subject
              .guide()
              .step(RESTRAINT)
              .map(Step::text)
              .filter(Cautions::namesRestraint)
              .isPresent();
      findings.require(
          names,
          here,
          Claim.COMPLETE,
          Optional.of(step),
          "step '" + RESTRAINT + "' says nothing of airbags, pretensioners or restraints");
    }
    if (opening.caution().isPresent() && !step.text().contains(opening.caution().get())) {
      Region told = subject.facts().regions().none();
      for (Map.Entry<String, Region> it : progress.cautions().entrySet()) {
        boolean says =
            subject
                .guide()
                .step(it.getKey())
                .filter(given -> given.text().contains(opening.caution().get()))
                .isPresent();
        told = says ? told.or(it.getValue()) : told;
      }
      findings.failOn(
          here.minus(told),
          Claim.COMPLETE,
          Optional.of(step),
          "nothing said so far: \"" + opening.caution().get() + "\" for " + opening.name());
    }
  }

  private static void given(
      String caution, Step step, Region here, Progress progress, Findings findings) {
    findings.failOn(
        here.minus(progress.cautioned(caution)),
        Claim.COMPLETE,
        Optional.of(step),
        "step '" + caution + "' does not come before this one");
  }

  private static boolean namesRestraint(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return lower.contains("airbag")
        || lower.contains("pretensioner")
        || lower.contains("restraint");
  }
}
