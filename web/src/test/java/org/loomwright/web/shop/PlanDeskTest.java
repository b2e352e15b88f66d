package org.loomwright.web.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.watch.PlanPhase;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.watch.Watch;

/** The desk with a planner that works until it is let go. */
class PlanDeskTest {
  private static final Duration LONG = Duration.ofMinutes(2);
  private static final KitOrder STEPS = order("crew-comfort");
  private static final KitOrder TRAILER = order("trailer");
  private static final Plan PLAN = Planner.plan(STEPS);

  private final List<String> begun = new CopyOnWriteArrayList<>();
  private final List<String> stopped = new CopyOnWriteArrayList<>();
  private final CountDownLatch go = new CountDownLatch(1);
  private final CountDownLatch working = new CountDownLatch(1);

  private static KitOrder order(String kit) {
    Read.Good good = (Read.Good) WorkspaceReader.read(Path.of("..", "demo"));
    return ((KitOrders.Found) KitOrders.resolve(good.workspace(), kit)).order();
  }

  private static KitOrder named(KitOrder order, String name) {
    Kit it = order.kit();
    return new KitOrder(
        new Kit(
            it.id(),
            name,
            it.revision(),
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

  private Plan slowly(KitOrder order, Watch watch) {
    begun.add(order.kit().name());
    watch.at(PlanPhase.LEADS);
    working.countDown();
    try {
      go.await();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
    try {
      PlanningStopped.ifAsked();
    } catch (PlanningStopped end) {
      stopped.add(order.kit().name());
      throw end;
    }
    return PLAN;
  }

  @Test
  void pagesAnswerAtOnceWhenThePlanIsSoonMade() {
    go.countDown();
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      assertThat(desk.soon(STEPS, LONG)).isInstanceOf(Planned.Done.class);
      assertThat(desk.soon(STEPS, LONG)).isEqualTo(desk.of(STEPS));
      assertThat(begun).hasSize(1);
    }
  }

  @Test
  void itTellsWhatPlanningIsAt() throws InterruptedException {
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      desk.of(STEPS);
      working.await();
      assertThat(desk.soon(STEPS, Duration.ZERO))
          .isInstanceOfSatisfying(
              Planned.Working.class,
              it -> assertThat(it.phaseWords()).isEqualTo(PlanPhase.LEADS.words()));
      go.countDown();
    }
  }

  @Test
  void anOlderOrderIsGivenUpForANewerOne() throws InterruptedException {
    KitOrder newer = named(STEPS, "newer");
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      desk.of(STEPS);
      working.await();
      desk.of(newer);
      until(() -> begun.contains("newer"));
      assertThat(stopped).containsExactly(STEPS.kit().name());
      go.countDown();
      assertThat(desk.soon(newer, LONG)).isInstanceOf(Planned.Done.class);
    }
  }

  @Test
  void aPersonStopsAndBeginsAgain() throws InterruptedException {
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      desk.of(STEPS);
      working.await();
      desk.stop("crew-comfort");
      assertThat(desk.soon(STEPS, LONG)).isEqualTo(new Planned.Stopped("crew-comfort"));
      until(() -> stopped.size() == 1);
      go.countDown();
      desk.again("crew-comfort");
      assertThat(desk.soon(STEPS, LONG)).isInstanceOf(Planned.Done.class);
      desk.stop("crew-comfort");
      desk.again("crew-comfort");
      assertThat(desk.of(STEPS)).isInstanceOf(Planned.Done.class);
      assertThat(begun).hasSize(2);
    }
  }

  @Test
  void theKitLookedAtGoesFirst() throws InterruptedException {
    String trailer = TRAILER.kit().name();
    String steps = STEPS.kit().name();
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      desk.of(TRAILER);
      working.await();
      desk.soon(STEPS, Duration.ZERO);
      until(() -> begun.size() == 2);
      go.countDown();
      assertThat(desk.soon(STEPS, LONG)).isInstanceOf(Planned.Done.class);
      assertThat(desk.soon(TRAILER, LONG)).isInstanceOf(Planned.Done.class);
      assertThat(begun).containsExactly(trailer, steps, trailer);
    }
  }

  @Test
  void thePlanBeforeIsKept() {
    KitOrder newer = named(STEPS, "newer");
    go.countDown();
    try (PlanDesk desk = new PlanDesk(this::slowly)) {
      Planned.Done first = (Planned.Done) desk.soon(STEPS, LONG);
      assertThat(desk.before("crew-comfort")).isEmpty();
      desk.soon(newer, LONG);
      assertThat(desk.before("crew-comfort")).containsSame(first.pages());
    }
  }

  @Test
  void theRealPlannerStopsInEveryPhase() throws InterruptedException {
    for (PlanPhase phase : PlanPhase.values()) {
      List<PlanPhase> seen = new CopyOnWriteArrayList<>();
      CountDownLatch over = new CountDownLatch(1);
      Thread thread =
          new Thread(
              () -> {
                try {
                  Planner.plan(
                      TRAILER,
                      now -> {
                        seen.add(now);
                        if (now == phase) {
                          Thread.currentThread().interrupt();
                        }
                      });
                } catch (PlanningStopped expected) {
                  over.countDown();
                }
              });
      thread.start();
      thread.join();
      assertThat(over.getCount()).as("stopped in " + phase).isZero();
      assertThat(seen).endsWith(phase);
    }
  }

  private static void until(java.util.function.BooleanSupplier holds) throws InterruptedException {
    for (int i = 0; i < 1200 && !holds.getAsBoolean(); i++) {
      Thread.sleep(100);
    }
    assertThat(holds.getAsBoolean()).isTrue();
  }
}
