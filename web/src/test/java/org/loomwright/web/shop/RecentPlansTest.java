package org.loomwright.web.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.watch.Watch;

/** Plans are made once for the same documents, and only the last ones are kept. */
class RecentPlansTest {
  private static final Plan PLAN = Planner.plan(order("A"));

  private final List<String> made = new ArrayList<>();
  private final RecentPlans plans = new RecentPlans(this::make, 2);

  /** The demo's kit in some revision, read anew each time. */
  private static KitOrder order(String revision) {
    Read.Good good = (Read.Good) WorkspaceReader.read(Path.of("..", "demo"));
    KitOrder order =
        ((KitOrders.Found) KitOrders.resolve(good.workspace(), "crew-comfort")).order();
    Kit it = order.kit();
    return new KitOrder(
        new Kit(
            it.id(),
            it.name(),
            revision,
            it.vehicle(),
            it.rules(),
            it.parts(),
            it.mounts(),
            it.wishes(),
            it.designedAgainst()),
        order.vehicle(),
        order.equipment(),
        order.parts(),
        order.rules(),
        order.pictures());
  }

  private Plan make(KitOrder order, Watch watch) {
    made.add(order.kit().revision());
    PlanningStopped.ifAsked();
    return PLAN;
  }

  private void plan(String... revisions) {
    for (String it : revisions) {
      assertThat(plans.plan(order(it), Watch.NONE)).isSameAs(PLAN);
    }
  }

  @Test
  void theSameDocumentsArePlannedOnce() {
    plan("A", "A", "B", "A");
    assertThat(made).containsExactly("A", "B");
  }

  @Test
  void theOneAskedForLongestAgoGoesFirst() {
    plan("A", "B", "A", "C", "A", "B");
    assertThat(made).containsExactly("A", "B", "C", "B");
  }

  @Test
  void whatWasStoppedIsNotKept() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> plan("A")).isInstanceOf(PlanningStopped.class);
    assertThat(Thread.interrupted()).isTrue();
    plan("A");
    assertThat(made).containsExactly("A", "A");
  }
}
