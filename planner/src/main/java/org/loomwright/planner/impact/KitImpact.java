package org.loomwright.planner.impact;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.difference.PlanDifference;
import org.loomwright.planner.difference.Topic;
import org.loomwright.planner.difference.Weight;

/**
 * What a change of its vehicle does to a kit.
 *
 * @param kit id of the kit
 * @param before whether it could be released: holds, marginal (with a named reason) or fails
 * @param after whether it can be now
 * @param changes what differs, worse before better before the rest; none when nothing does
 */
public record KitImpact(String kit, Verdict before, Verdict after, List<Change> changes) {
  public KitImpact {
    changes = List.copyOf(changes);
  }

  /**
   * Compares two plans of one kit.
   *
   * @param before empty when the vehicle had no possible build
   * @param after empty when the vehicle has no possible build
   */
  public static KitImpact of(String kit, Optional<Plan> before, Optional<Plan> after) {
    return new KitImpact(
        kit,
        before.map(KitImpact::standing).orElse(Verdict.FAILS),
        after.map(KitImpact::standing).orElse(Verdict.FAILS),
        changes(before, after).stream().sorted(Comparator.comparing(Change::weight)).toList());
  }

  /** Fails when it can't be released, else the worst of its checks. */
  private static Verdict standing(Plan plan) {
    return plan.releasable() ? plan.worst() : Verdict.FAILS;
  }

  private static List<Change> changes(Optional<Plan> before, Optional<Plan> after) {
    if (before.isPresent() && after.isPresent()) {
      return PlanDifference.between(before.get(), after.get());
    }
    if (before.isPresent()) {
      return List.of(
          new Change(
              Weight.WORSE,
              "the rules of the vehicle leave no possible build, so there is nothing to plan for",
              Topic.GAP));
    }
    return after.isPresent()
        ? List.of(
            new Change(
                Weight.BETTER,
                "the vehicle has possible builds now, before it had none",
                Topic.GAP))
        : List.of();
  }

  /** Whether anything differs. */
  public boolean isTouched() {
    return !changes.isEmpty();
  }

  /** The weightiest change; neutral when there is none. */
  Weight weight() {
    return changes.isEmpty() ? Weight.NEUTRAL : changes.get(0).weight();
  }

  /** Whether it can be released, before and now, as one line without the kit. */
  public String words() {
    return before == after
        ? now(after) + ", as before"
        : now(after) + "; before, it " + then(before);
  }

  private static String now(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "can be released";
      case MARGINAL -> "can be released with a named reason only";
      case FAILS -> "can't be released";
    };
  }

  private static String then(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "could";
      case MARGINAL -> "could with a named reason";
      case FAILS -> "could not";
    };
  }
}
