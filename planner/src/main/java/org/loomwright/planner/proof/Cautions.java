package org.loomwright.planner.proof;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.Opening;

/**
 * Every caution that an act, a place or a flag calls for is given before it: "caution/general"
 * before anything else, those of {@link Dangers} before what they warn of, and an opening's own
 * caution with or before the step that opens it. What a caution is about is looked for in its text.
 */
final class Cautions implements StepCheck {
  static final String GENERAL = "caution/general";

  private final Subject subject;
  private final Dangers dangers;

  Cautions(Subject subject) {
    this.subject = subject;
    this.dangers = new Dangers(subject);
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    if (step.kind() == StepKind.CAUTION) {
      return;
    }
    given(GENERAL, List.of(), step, here, progress, findings);
    dangers
        .of(step)
        .forEach((caution, words) -> given(caution, words, step, here, progress, findings));
    for (Opening opening : dangers.opened(step)) {
      own(opening, step, here, progress, findings);
    }
  }

  private void own(Opening opening, Step step, Region here, Progress progress, Findings findings) {
    if (opening.caution().isEmpty() || step.text().contains(opening.caution().get())) {
      return;
    }
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

  private void given(
      String caution,
      List<String> words,
      Step step,
      Region here,
      Progress progress,
      Findings findings) {
    findings.failOn(
        here.minus(progress.cautioned(caution)),
        Claim.COMPLETE,
        Optional.of(step),
        "step '" + caution + "' does not come before this one");
    for (Step copy : subject.guide().steps()) {
      boolean meant = copy.id().equals(caution) || copy.id().startsWith(caution + "/");
      findings.require(
          !meant || words.isEmpty() || saysOne(copy, words),
          here,
          Claim.COMPLETE,
          Optional.of(step),
          "step '" + copy.id() + "' says nothing of " + String.join(", ", words));
    }
  }

  private static boolean saysOne(Step step, List<String> words) {
    String lower = step.text().toLowerCase(Locale.ROOT);
    return words.stream().anyMatch(lower::contains);
  }
}
