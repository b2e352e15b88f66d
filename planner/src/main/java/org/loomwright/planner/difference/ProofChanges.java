package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;

/** What can no longer be shown of all builds, or can be shown now. */
final class ProofChanges {
  private static final String OTHERS = "; on others of these builds ";

  private static final String COVER = "cover";

  private ProofChanges() {}

  static List<Change> of(Two two) {
    List<Change> worse = new ArrayList<>();
    List<Change> better = new ArrayList<>();
    List<Change> other = new ArrayList<>();
    Proof before = two.before().proof();
    boolean allServed = two.before().unserved().isEmpty() && two.after().unserved().isEmpty();
    for (Obligation now : two.after().proof().obligations()) {
      if (now.id().equals(COVER) && !allServed) {
        // Says no more than that builds are not served, which is told with its reason.
        continue;
      }
      Optional<Obligation> was =
          before.obligations().stream().filter(it -> it.id().equals(now.id())).findFirst();
      boolean shownBefore = was.map(Obligation::shown).orElse(true);
      if (shownBefore && !now.shown()) {
        worse.add(
            Change.worse(Topic.PROOF, "the proof fails: " + failure(two.after(), two.is(), now)));
      } else if (!shownBefore && now.shown()) {
        better.add(Change.better(Topic.PROOF, "the proof shows now that " + now.words()));
      } else if (!now.shown()) {
        String is = failure(two.after(), two.is(), now);
        String then = was.map(it -> failure(two.before(), two.was(), it)).orElse("");
        if (!is.equals(then)) {
          other.add(Change.neutral(Topic.PROOF, "the proof still fails, now: " + is));
        }
      }
    }
    worse.addAll(better);
    worse.addAll(other);
    return worse;
  }

  private static String failure(Plan plan, PlanNames names, Obligation obligation) {
    return plan.proof().counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation.id()))
        .findFirst()
        .map(it -> failure(plan, names, it))
        .orElseGet(() -> Words.cut(obligation.words() + "; " + obligation.detail()));
  }

  private static String failure(Plan plan, PlanNames names, Counterexample example) {
    String step =
        plan.guide().step(example.step()).map(it -> ", at step " + it.number()).orElse("");
    // One of several like failures is enough to see what is wrong.
    String what = example.what().split(OTHERS, 2)[0];
    return names.brief(what) + " (" + Words.cut(example.words()) + step + ")";
  }
}
