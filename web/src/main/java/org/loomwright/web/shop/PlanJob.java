package org.loomwright.web.shop;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.watch.PlanPhase;

/** One planning of one kit for given documents. Locking is up to the desk. */
final class PlanJob {
  private final KitOrder order;
  private final long askedNs = System.nanoTime();
  private final CountDownLatch over = new CountDownLatch(1);
  private volatile Optional<PlanPhase> phase = Optional.empty();
  private volatile Optional<Planned> end = Optional.empty();

  /** Whether somebody waits before the page of this kit. */
  private boolean lookedAt;

  PlanJob(KitOrder order, boolean lookedAt) {
    this.order = order;
    this.lookedAt = lookedAt;
  }

  KitOrder order() {
    return order;
  }

  boolean lookedAt() {
    return lookedAt;
  }

  void lookAt() {
    lookedAt = true;
  }

  boolean isOver() {
    return end.isPresent();
  }

  void at(PlanPhase now) {
    phase = Optional.of(now);
  }

  /** It waits again for its turn. */
  void setAside() {
    phase = Optional.empty();
  }

  /** The first end counts. */
  void end(Planned how) {
    if (end.isEmpty()) {
      end = Optional.of(how);
      over.countDown();
    }
  }

  Planned state() {
    return end.orElseGet(
        () ->
            new Planned.Working(
                Duration.ofNanos(System.nanoTime() - askedNs).toSeconds(),
                phase.map(PlanPhase::words).orElse("waiting for its turn")));
  }

  Optional<KitPages> pages() {
    return end.flatMap(
        it -> it instanceof Planned.Done done ? Optional.of(done.pages()) : Optional.empty());
  }

  /** Waits for the end; returns early when the waiting thread is interrupted. */
  void await(Duration patience) {
    try {
      var unused = over.await(patience.toNanos(), TimeUnit.NANOSECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
