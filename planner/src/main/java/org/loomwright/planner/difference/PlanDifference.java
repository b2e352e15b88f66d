package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Plan;

/**
 * What a change did: two plans of one kit compared, the most important first. Worse and better
 * change places when the plans do.
 *
 * <p>Leads are matched by the needs they serve and where they end, cases by the needs and builds
 * they stand for, so that other numbers and letters are no change by themselves.
 */
public final class PlanDifference {
  /** Changes of one sort that are told one by one before they are summed up. */
  public static final int USUAL_DETAIL = 3;

  private PlanDifference() {}

  /** The changes, of each sort at most {@link #USUAL_DETAIL} one by one; none for equal plans. */
  public static List<Change> between(Plan before, Plan after) {
    return between(before, after, USUAL_DETAIL);
  }

  /**
   * The changes.
   *
   * @param detail changes of one sort that are told one by one; more are summed up in one line. 1
   *     or more
   */
  public static List<Change> between(Plan before, Plan after, int detail) {
    if (detail < 1) {
      throw new IllegalArgumentException("detail must be 1 or more, but is " + detail);
    }
    if (before.equals(after)) {
      return List.of();
    }
    Two two = Two.of(before, after, detail);
    List<Change> changes = new ArrayList<>();
    changes.addAll(ReleaseChanges.of(two));
    changes.addAll(ServedChanges.of(two));
    changes.addAll(ProofChanges.of(two));
    changes.addAll(CheckChanges.verdicts(two));
    changes.addAll(NeedChanges.of(two));
    changes.addAll(WayChanges.used(two));
    changes.addAll(CaseChanges.of(two));
    changes.addAll(PackChanges.numbersAndCost(two));
    changes.addAll(LeadChanges.of(two));
    changes.addAll(CheckChanges.figures(two));
    changes.addAll(GuideChanges.of(two));
    changes.addAll(BundleChanges.of(two));
    changes.addAll(PackChanges.parts(two));
    changes.addAll(WayChanges.open(two));
    changes.addAll(NeedChanges.gap(two));
    return List.copyOf(changes);
  }
}
