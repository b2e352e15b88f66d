package org.loomwright.web.shop;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.ImpossibleVehicle;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.watch.Watch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Plans kits one after the other beside the pages, each once for the same documents. The kit that
 * is looked at goes first; the work on one nobody looks at is set aside for it. When documents of a
 * kit change, the work on its older plan ends. May be shared between threads.
 */
public final class PlanDesk implements AutoCloseable {
  /** So long a page waits for a plan; most changes are planned by then. */
  public static final Duration PATIENCE = Duration.ofMillis(400);

  private static final Logger LOG = LoggerFactory.getLogger(PlanDesk.class);

  /** Makes a plan; the planner, but for tests of the desk. */
  @FunctionalInterface
  interface Maker {
    /** Plans a kit; ends with {@link PlanningStopped} soon after the thread is interrupted. */
    Plan plan(KitOrder order, Watch watch);
  }

  private final Maker maker;
  private final Thread worker = new Thread(this::work, "planner");
  private final Map<String, PlanJob> jobs = new LinkedHashMap<>();
  private final Map<String, KitPages> before = new LinkedHashMap<>();
  private final Deque<PlanJob> waiting = new ArrayDeque<>();
  private @Nullable PlanJob running;
  private boolean closed;

  /** A desk with nothing on it. */
  public PlanDesk() {
    this(RecentPlans.SHARED);
  }

  PlanDesk(Maker maker) {
    this.maker = maker;
    // Planning never keeps the program from ending.
    worker.setDaemon(true);
    worker.start();
  }

  /** How far a kit is; begins to plan it when that has not been done for these documents. */
  public Planned of(KitOrder order) {
    return job(order, false).state();
  }

  /**
   * The same for the kit that a person looks at: it goes first, and when it is not planned yet this
   * waits a little for it.
   *
   * @param patience longest wait
   */
  public Planned soon(KitOrder order, Duration patience) {
    PlanJob job = job(order, true);
    job.await(patience);
    return job.state();
  }

  /** Stops the work on a kit; nothing happens when there is none. */
  public synchronized void stop(String kit) {
    PlanJob job = jobs.get(kit);
    if (job != null) {
      drop(job);
    }
  }

  /** Begins anew to plan a kit that was stopped; nothing happens when it was not. */
  public synchronized void again(String kit) {
    PlanJob job = jobs.get(kit);
    if (job != null && job.state() instanceof Planned.Stopped) {
      begin(new PlanJob(job.order(), true));
    }
  }

  /**
   * The finished plan of a kit before the one that is made or shown now, so that it can be told
   * what a change did; empty until there are two.
   */
  public synchronized Optional<KitPages> before(String kit) {
    return Optional.ofNullable(before.get(kit));
  }

  private synchronized PlanJob job(KitOrder order, boolean lookedAt) {
    PlanJob job = jobs.get(order.kit().id());
    if (job != null && job.order().equals(order)) {
      if (lookedAt && !job.lookedAt()) {
        job.lookAt();
        if (waiting.remove(job)) {
          queue(job);
        }
      }
      return job;
    }
    if (job != null) {
      job.pages().ifPresent(pages -> before.put(order.kit().id(), pages));
      drop(job);
    }
    PlanJob fresh = new PlanJob(order, lookedAt);
    begin(fresh);
    return fresh;
  }

  private void begin(PlanJob job) {
    jobs.put(job.order().kit().id(), job);
    queue(job);
  }

  private void queue(PlanJob job) {
    if (!job.lookedAt()) {
      waiting.addLast(job);
    } else {
      waiting.addFirst(job);
      if (running != null && !running.lookedAt()) {
        worker.interrupt();
      }
    }
    notifyAll();
  }

  /** Takes a job off the desk, if it is not over. */
  private void drop(PlanJob job) {
    if (job.isOver()) {
      return;
    }
    waiting.remove(job);
    job.end(new Planned.Stopped(job.order().kit().id()));
    if (job.equals(running)) {
      worker.interrupt();
    }
  }

  private void work() {
    for (Optional<PlanJob> next = next(); next.isPresent(); next = next()) {
      PlanJob job = next.get();
      Planned end;
      try {
        end = new Planned.Done(KitPages.of(job.order(), maker.plan(job.order(), job::at)));
      } catch (PlanningStopped stopped) {
        end = new Planned.Stopped(job.order().kit().id());
      } catch (ImpossibleVehicle impossible) {
        end = new Planned.Failed(String.valueOf(impossible.getMessage()));
      } catch (RuntimeException | StackOverflowError failure) {
        LOG.error("Planning kit {} failed.", job.order().kit().id(), failure);
        end =
            new Planned.Failed(
                "A fault of the program itself stopped the planning of this kit; the log has the"
                    + " details.");
      }
      over(job, end);
    }
  }

  private synchronized Optional<PlanJob> next() {
    while (waiting.isEmpty() && !closed) {
      try {
        wait();
      } catch (InterruptedException ignored) {
        // Meant for work that was over by then.
        continue;
      }
    }
    running = closed ? null : waiting.pollFirst();
    return Optional.ofNullable(running);
  }

  private synchronized void over(PlanJob job, Planned end) {
    running = null;
    // An interrupt that came too late for this job is not meant for the next.
    var unused = Thread.interrupted();
    if (end instanceof Planned.Stopped && !job.isOver() && !closed) {
      // Only another kit's being looked at stops a job that nobody dropped.
      job.setAside();
      waiting.addLast(job);
    } else {
      job.end(end);
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    jobs.values().forEach(this::drop);
    waiting.clear();
    worker.interrupt();
    notifyAll();
  }
}
