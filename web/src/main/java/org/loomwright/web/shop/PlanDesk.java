package org.loomwright.web.shop;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.ImpossibleVehicle;
import org.loomwright.planner.plan.Planner;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Plans kits one after the other beside the pages, each once for the same documents. Of a kit whose
 * documents have changed only the newest plan is kept.
 */
public final class PlanDesk implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(PlanDesk.class);

  private record Job(KitOrder order, long startedNs, Future<KitPages> pages) {}

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "planner");
            // Planning never keeps the program from ending.
            thread.setDaemon(true);
            return thread;
          });

  private final Map<String, Job> jobs = new LinkedHashMap<>();

  /** How far a kit is; begins to plan it when that has not been done for these documents. */
  public synchronized Planned of(KitOrder order) {
    Job job = jobs.get(order.kit().id());
    if (job == null || !job.order().equals(order)) {
      if (job != null) {
        job.pages().cancel(true);
      }
      job = new Job(order, System.nanoTime(), worker.submit(() -> plan(order)));
      jobs.put(order.kit().id(), job);
    }
    return state(job);
  }

  private static KitPages plan(KitOrder order) {
    return KitPages.of(order, Planner.plan(order));
  }

  private static Planned state(Job job) {
    if (!job.pages().isDone()) {
      return new Planned.Working(Duration.ofNanos(System.nanoTime() - job.startedNs()).toSeconds());
    }
    try {
      return new Planned.Done(job.pages().get());
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof ImpossibleVehicle impossible) {
        return new Planned.Failed(String.valueOf(impossible.getMessage()));
      }
      LOG.error("Planning kit {} failed.", job.order().kit().id(), failure.getCause());
      return new Planned.Failed(
          "A fault of the program itself stopped the planning of this kit; the log has the"
              + " details.");
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Planned.Failed("Planning was stopped.");
    }
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
