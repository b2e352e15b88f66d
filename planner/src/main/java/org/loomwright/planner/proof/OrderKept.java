package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.TellHow;

/**
 * Openings and power: what a step needs open is open, nothing is opened twice or for nothing, no
 * wiring is touched live, live readings are live ones, and all is left as it was found.
 */
final class OrderKept implements StepCheck {
  private final Subject subject;

  OrderKept(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    power(step, here, progress, findings);
    Act act = step.act().orElse(null);
    if (act instanceof Act.Open open) {
      opens(at, open.opening(), here, progress, findings);
    } else if (act instanceof Act.Close close) {
      closes(at, close.opening(), here, progress, findings);
    } else {
      for (String opening : Reach.openings(subject, step)) {
        findings.failOn(
            here.minus(progress.open(opening)),
            Claim.ORDER,
            at,
            name(opening) + " is not open when this is to be done");
      }
    }
  }

  /** All closed and live when the guide is done. */
  void atEnd(Step step, Region here, Progress progress, Findings findings) {
    for (String opening : progress.everOpened()) {
      findings.failOn(
          here.and(progress.open(opening)),
          Claim.ORDER,
          Optional.of(step),
          name(opening) + " is left open");
    }
    findings.failOn(
        here.minus(progress.live()),
        Claim.ORDER,
        Optional.of(step),
        "the battery is left disconnected");
  }

  private void power(Step step, Region here, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    Region live = here.and(progress.live());
    Region dead = here.minus(progress.live());
    boolean liveReading = step.ask().filter(it -> it.how() == TellHow.MEASURE_LIVE).isPresent();
    boolean deadReading = step.ask().filter(it -> it.how() == TellHow.MEASURE_ISOLATED).isPresent();
    if (liveReading || step.live().equals(Optional.of(true))) {
      findings.failOn(dead, Claim.ORDER, at, "this needs power, and the battery is disconnected");
    }
    if (deadReading || step.live().equals(Optional.of(false))) {
      findings.failOn(live, Claim.ORDER, at, "this needs the battery disconnected, and it is live");
    }
    step.act()
        .ifPresent(
            act -> {
              if (act instanceof Act.Isolate) {
                findings.failOn(dead, Claim.ORDER, at, "the battery is disconnected already");
              } else if (act instanceof Act.Reconnect) {
                findings.failOn(live, Claim.ORDER, at, "the battery is connected already");
              } else if (touchesWiring(act)) {
                findings.failOn(live, Claim.ORDER, at, "wiring is touched while it is live");
              }
            });
  }

  private void opens(
      Optional<Step> at, String opening, Region here, Progress progress, Findings findings) {
    findings.require(
        subject.vehicle().opening(opening).isPresent(),
        here,
        Claim.ORDER,
        at,
        "the vehicle has no opening '" + opening + "'");
    findings.failOn(
        here.and(progress.open(opening)), Claim.ORDER, at, name(opening) + " is open already");
    findings.failOn(
        here.and(progress.closed(opening)),
        Claim.ORDER,
        at,
        name(opening) + " was closed before and is opened a second time");
    for (String before : Reach.behind(subject, opening)) {
      findings.failOn(
          here.minus(progress.open(before)),
          Claim.ORDER,
          at,
          name(opening) + " lies behind " + name(before) + ", which is not open");
    }
  }

  private void closes(
      Optional<Step> at, String opening, Region here, Progress progress, Findings findings) {
    Region open = here.and(progress.open(opening));
    findings.failOn(here.minus(open), Claim.ORDER, at, name(opening) + " is not open");
    findings.failOn(
        open.minus(progress.used(opening)),
        Claim.ORDER,
        at,
        name(opening) + " was opened and nothing was done behind it");
    for (Opening inner : subject.vehicle().openings()) {
      if (inner.behind().contains(opening)) {
        findings.failOn(
            open.and(progress.open(inner.id())),
            Claim.ORDER,
            at,
            name(opening) + " is closed while " + inner.name() + " behind it is open");
      }
    }
  }

  private String name(String opening) {
    return subject.vehicle().opening(opening).map(Opening::name).orElse("'" + opening + "'");
  }

  private static boolean touchesWiring(Act act) {
    return act instanceof Act.Lay
        || act instanceof Act.PullPlug
        || act instanceof Act.PlugIn
        || Ends.of(act).isPresent();
  }
}
