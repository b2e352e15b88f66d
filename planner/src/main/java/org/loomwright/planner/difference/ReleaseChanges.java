package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;

/** Whether the kit can be released, and what stands against it. */
final class ReleaseChanges {
  private ReleaseChanges() {}

  static List<Change> of(Two two) {
    boolean could = two.before().releasable();
    boolean can = two.after().releasable();
    boolean neededReason = two.before().worst() == Verdict.MARGINAL;
    boolean needsReason = two.after().worst() == Verdict.MARGINAL;
    if (could && !can) {
      return List.of(
          Change.worse(Topic.PACK, "the kit can no longer be released: " + against(two.after())));
    }
    if (!could && can) {
      return List.of(
          Change.better(
              Topic.PACK,
              "the kit can be released now"
                  + (needsReason ? ", with a named reason: " + marginal(two.after()) : "")));
    }
    if (can && needsReason && !neededReason) {
      return List.of(
          Change.worse(
              Topic.PACK,
              "the kit can now be released only with a named reason: " + marginal(two.after())));
    }
    if (can && neededReason && !needsReason) {
      return List.of(
          Change.better(Topic.PACK, "the kit can now be released without a named reason"));
    }
    return List.of();
  }

  private static String against(Plan plan) {
    List<String> reasons = new ArrayList<>();
    if (!plan.unserved().isEmpty()) {
      reasons.add("some builds are not served");
    }
    long failing = count(plan, Verdict.FAILS);
    if (failing > 0) {
      reasons.add(Words.count(failing, "check") + Words.verb(failing, " fails", " fail"));
    }
    // That builds are not served makes the proof fail too, and is said already.
    boolean proofFails =
        plan.proof().obligations().stream()
            .anyMatch(it -> !it.shown() && (plan.unserved().isEmpty() || !it.id().equals("cover")));
    if (proofFails || reasons.isEmpty()) {
      reasons.add("the proof fails");
    }
    return Words.list(reasons);
  }

  private static String marginal(Plan plan) {
    long marginal = count(plan, Verdict.MARGINAL);
    return Words.count(marginal, "check") + Words.verb(marginal, " is", " are") + " marginal";
  }

  private static long count(Plan plan, Verdict verdict) {
    return plan.checks().stream().filter(it -> it.verdict() == verdict).count();
  }
}
