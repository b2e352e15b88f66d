package org.loomwright.web.shop;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.watch.Watch;

/**
 * Plans kits, and keeps the plans made last: a change that was undone, a job whose release was made
 * of the documents as they are, or a release that is judged again takes no planning. May be shared
 * between threads.
 */
final class RecentPlans implements PlanDesk.Maker {
  /** Those of the whole program: the same documents give the same plan. */
  static final RecentPlans SHARED = new RecentPlans(Planner::plan, 12);

  private final PlanDesk.Maker maker;
  private final int most;
  // The one asked for longest ago comes first.
  private final Map<KitOrder, Plan> plans = new LinkedHashMap<>(16, 0.75f, true);

  /**
   * @param maker makes those that are not kept
   * @param most number kept
   */
  RecentPlans(PlanDesk.Maker maker, int most) {
    this.maker = maker;
    this.most = most;
  }

  @Override
  public Plan plan(KitOrder order, Watch watch) {
    Optional<Plan> kept = kept(order);
    if (kept.isPresent()) {
      return kept.get();
    }
    Plan plan = maker.plan(order, watch);
    keep(order, plan);
    return plan;
  }

  private synchronized Optional<Plan> kept(KitOrder order) {
    return Optional.ofNullable(plans.get(order));
  }

  private synchronized void keep(KitOrder order, Plan plan) {
    plans.put(order, plan);
    if (plans.size() > most) {
      plans.remove(plans.keySet().iterator().next());
    }
  }
}
