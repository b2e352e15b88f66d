package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.GroundStud;

/**
 * At each landing: no other end is in the cavity or slot, and the stud has room for one more lug.
 */
final class NothingTwice implements StepCheck {
  private final Subject subject;

  NothingTwice(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    Optional<Ends.Put> put = step.act().flatMap(Ends::of);
    if (put.isEmpty()) {
      return;
    }
    Ends.takes(put.get().landing())
        .ifPresent(spot -> free(step, put.get(), spot, here, progress, findings));
    if (put.get().landing() instanceof Landing.OnGround ground) {
      subject
          .vehicle()
          .ground(ground.ground())
          .ifPresent(stud -> room(step, put.get(), stud, here, progress, findings));
    }
  }

  private void free(
      Step step, Ends.Put put, String spot, Region here, Progress progress, Findings findings) {
    Region none = subject.facts().regions().none();
    findings.failOn(none, Claim.NOTHING_TWICE, Optional.of(step), "");
    for (Map.Entry<Act, Region> it : progress.acts().entrySet()) {
      Optional<Ends.Put> other = Ends.of(it.getKey());
      if (other.isPresent()
          && !sameEnd(other.get(), put)
          && Ends.takes(other.get().landing()).equals(Optional.of(spot))) {
        findings.failOn(
            here.and(it.getValue()),
            Claim.NOTHING_TWICE,
            Optional.of(step),
            spot + " already holds " + other.get().words() + " when " + put.words() + " goes in");
      }
    }
  }

  private void room(
      Step step, Ends.Put put, GroundStud stud, Region here, Progress progress, Findings findings) {
    List<Region> others = new ArrayList<>();
    progress
        .acts()
        .forEach(
            (act, builds) ->
                Ends.of(act)
                    .filter(it -> it.landing() instanceof Landing.OnGround)
                    .filter(it -> ((Landing.OnGround) it.landing()).ground().equals(stud.id()))
                    .filter(it -> !sameEnd(it, put))
                    .ifPresent(it -> others.add(builds)));
    int free = stud.lugsMost() - stud.lugs();
    Region full = atLeast(others, free, here);
    findings.failOn(
        full,
        Claim.NOTHING_TWICE,
        Optional.of(step),
        stud.name()
            + " would carry "
            + (stud.lugsMost() + 1)
            + " lugs or more; it may carry "
            + stud.lugsMost());
  }

  /** Builds of a region that lie in at least so many of the sets. */
  private static Region atLeast(List<Region> sets, int number, Region within) {
    List<Region> reached = new ArrayList<>();
    reached.add(within);
    for (int i = 0; i < number; i++) {
      reached.add(within.in().none());
    }
    for (Region set : sets) {
      for (int i = number; i > 0; i--) {
        reached.set(i, reached.get(i).or(reached.get(i - 1).and(set)));
      }
    }
    return reached.get(number);
  }

  private static boolean sameEnd(Ends.Put one, Ends.Put other) {
    return one.lead().equals(other.lead()) && one.end().equals(other.end());
  }
}
