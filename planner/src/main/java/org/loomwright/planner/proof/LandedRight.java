package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Undo;

/**
 * At each act: what must be so follows from the answers given so far and the vehicle's rules, on
 * every possible build with these answers. For an act that can't be undone easily it must not rest
 * on a trait that a meter could have told and nobody measured.
 */
final class LandedRight implements StepCheck {
  private record Visit(Step step, Region here, Knowledge knowledge, Findings findings) {
    Visit only(Region builds) {
      return new Visit(step, builds, knowledge, findings);
    }
  }

  private final Subject subject;
  private final LandingRules rules;

  LandedRight(Subject subject) {
    this.subject = subject;
    this.rules = new LandingRules(subject);
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    if (step.act().isEmpty()) {
      return;
    }
    Act act = step.act().get();
    Visit visit = new Visit(step, here, new Knowledge(subject, progress), findings);
    if (act instanceof Act.PullPlug it) {
      check(visit, plugToPull(it), step.undo().isHard());
    } else if (act instanceof Act.FitFuse it) {
      check(visit, fuseFits(it), false);
    } else if (!(act instanceof Act.Park)) {
      Ends.of(act).ifPresent(put -> landed(visit, put, progress));
    }
  }

  private void landed(Visit visit, Ends.Put put, Progress progress) {
    Optional<Lead> lead = subject.lead(put.lead());
    if (lead.isEmpty()) {
      // The check for completeness names it.
      return;
    }
    // What is cut off is not put on again, whatever the place it goes to allows.
    boolean cut = visit.step().act().filter(it -> it instanceof Act.Change).isPresent();
    Undo byVehicle = cut ? Undo.NOT_AT_ALL : rules.undo(put.landing());
    boolean promisesTooMuch =
        (cut
                || put.landing() instanceof Landing.InCavity
                || put.landing() instanceof Landing.InSlot)
            && visit.step().undo().compareTo(byVehicle) < 0;
    visit
        .findings()
        .require(
            !promisesTooMuch,
            visit.here(),
            Claim.LANDED_RIGHT,
            Optional.of(visit.step()),
            "the step makes the act look easier to take back than it is");
    boolean hard = visit.step().undo().isHard() || byVehicle.isHard();
    Region pulled = rules.pulled(put.landing(), progress);
    check(visit.only(visit.here().and(pulled)), rules.of(lead.get(), put.landing(), true), hard);
    check(visit.only(visit.here().minus(pulled)), rules.of(lead.get(), put.landing(), false), hard);
  }

  private void check(Visit visit, List<Must> musts, boolean hard) {
    if (visit.here().isEmpty()) {
      return;
    }
    for (Must must : musts) {
      // Where the answers don't even rule out that it is wrong, that is the thing to say.
      if (rightly(visit, must) && hard) {
        measured(visit, must);
      }
    }
  }

  /** Whether what must be so follows from the answers; keeps a fault where it does not. */
  private boolean rightly(Visit visit, Must must) {
    Optional<Step> at = Optional.of(visit.step());
    visit.findings().require(true, visit.here(), Claim.LANDED_RIGHT, at, "");
    List<Knowledge.Part> parts =
        visit.knowledge().failing(visit.here(), must.so().support(), it -> wrong(it, must));
    for (Knowledge.Part part : parts) {
      Region wrong = wrong(part, must);
      SortedSet<String> open = must.so().support();
      open.retainAll(part.notAsked());
      visit
          .findings()
          .failOn(
              wrong,
              Claim.LANDED_RIGHT,
              at,
              part.builds().meets(wrong)
                  ? must.otherwise()
                      + (open.isEmpty() ? "" : "; " + subject.names(open) + " was not asked before")
                  : "no answer given before this step rules out that " + must.otherwise());
    }
    return parts.isEmpty();
  }

  private Region wrong(Knowledge.Part part, Must must) {
    return part.known(subject.possible()).minus(must.so());
  }

  /** It does not rest on what a meter could have told and did not. */
  private void measured(Visit visit, Must must) {
    for (Knowledge.Part part :
        visit.knowledge().failing(visit.here(), must.so().support(), it -> unmeasured(it, must))) {
      visit
          .findings()
          .failOn(
              part.builds(),
              Claim.LANDED_RIGHT,
              Optional.of(visit.step()),
              "this can't be undone easily and rests on "
                  + subject.names(culprits(part, must))
                  + ", which a meter tells and nobody measured before; otherwise it might be that "
                  + must.otherwise());
    }
  }

  private Region unmeasured(Knowledge.Part part, Must must) {
    return culprits(part, must).isEmpty() ? part.builds().in().none() : part.builds();
  }

  private SortedSet<String> culprits(Knowledge.Part part, Must must) {
    Region known = part.known(subject.possible());
    SortedSet<String> culprits = known.forget(part.notRead()).minus(must.so()).support();
    culprits.retainAll(part.notRead());
    return culprits;
  }

  private List<Must> plugToPull(Act.PullPlug act) {
    Optional<Connector> connector = subject.vehicle().connector(act.connector());
    if (connector.isEmpty()) {
      return List.of(
          new Must(
              subject.facts().regions().none(),
              "the vehicle has no connector '" + act.connector() + "'"));
    }
    return List.of(
        new Must(
            subject.facts().present(connector.get()), connector.get().name() + " is not there"),
        new Must(
            subject.facts().plugged(connector.get(), act.cavity()),
            "cavity "
                + act.cavity()
                + " of "
                + connector.get().name()
                + " has no seal plug to pull"));
  }

  private List<Must> fuseFits(Act.FitFuse act) {
    Optional<FuseBlock> block = subject.vehicle().fuseBlock(act.block());
    Optional<Slot> slot = block.flatMap(it -> it.slot(act.slot()));
    Region all = subject.facts().regions().all();
    Region none = subject.facts().regions().none();
    if (slot.isEmpty()) {
      return List.of(new Must(none, "the vehicle has no slot " + act.block() + " " + act.slot()));
    }
    List<Must> musts = new ArrayList<>();
    double most = slot.get().maxRating().amperes();
    musts.add(
        new Must(
            act.ratingA() <= most ? all : none,
            "the fuse of "
                + Figures.of(act.ratingA())
                + " A is above the "
                + Figures.of(most)
                + " A that slot "
                + act.slot()
                + " may hold"));
    musts.add(new Must(subject.facts().metal(slot.get()), "slot " + act.slot() + " has no metal"));
    boolean form =
        subject.order().parts().fuses().stream()
            .anyMatch(
                fuse ->
                    fuse.form().equals(slot.get().form())
                        && Math.abs(fuse.rating().amperes() - act.ratingA()) < 1e-9);
    musts.add(
        new Must(
            form ? all : none,
            "the parts have no "
                + Figures.of(act.ratingA())
                + " A fuse of the form '"
                + slot.get().form()
                + "' that slot "
                + act.slot()
                + " takes"));
    return musts;
  }
}
