package org.loomwright.web.shop;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.KnownVehicle;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.planner.impact.Impact;
import org.loomwright.planner.impact.KitImpact;
import org.loomwright.planner.impact.ReleaseImpact;
import org.loomwright.planner.impact.Released;
import org.loomwright.planner.plan.ImpossibleVehicle;
import org.loomwright.planner.watch.PlanPhase;
import org.loomwright.planner.watch.PlanningStopped;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Works out beside the pages what changes of vehicles do to their kits, one after the other, each
 * once for the same documents. May be shared between threads.
 */
public final class ImpactDesk implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ImpactDesk.class);

  /** Answers kept; older ones are worked out again when they are asked for. */
  private static final int MOST = 8;

  /**
   * What is asked.
   *
   * @param vehicle the vehicle
   * @param from number of its revision before the change
   */
  public record Question(String vehicle, long from) {}

  /**
   * The documents before and after a change.
   *
   * @param before with the older revision of the vehicle
   * @param after as they are
   * @param released releases made for the vehicle, newest first
   */
  public record Two(Workspace before, Workspace after, List<ReleasedOrder.Result> released) {
    public Two {
      released = List.copyOf(released);
    }
  }

  /** How far the work on a question is. */
  public sealed interface Answer {}

  /**
   * It waits or is under way.
   *
   * @param seconds since it was asked for
   * @param words what is done just now
   */
  public record Working(long seconds, String words) implements Answer {}

  /**
   * It is known.
   *
   * @param impact what it does to the kits
   * @param releases what it does to their releases, newest first
   */
  public record Known(Impact impact, List<ReleaseImpact> releases) implements Answer {
    public Known {
      releases = List.copyOf(releases);
    }
  }

  /**
   * It can't be worked out.
   *
   * @param why a full sentence for a person
   */
  public record Failed(String why) implements Answer {}

  /** A person stopped it. */
  public record Stopped() implements Answer {}

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "impact");
            // This work never keeps the program from ending.
            thread.setDaemon(true);
            return thread;
          });
  private final Map<Question, Job> jobs = new LinkedHashMap<>();

  /**
   * How far a question is; begins to work on it when that has not been done for these documents,
   * and waits a little for the answer.
   *
   * @param state what the answer rests on; when it differs from the last time, all is done anew
   * @param documents reads them; empty when the older revision does not fit the others
   * @param patience longest wait
   */
  public Answer soon(
      Question question, Object state, Supplier<Optional<Two>> documents, Duration patience) {
    Job job = job(question, state, documents);
    job.await(patience);
    return job.answer();
  }

  private synchronized Job job(Question question, Object state, Supplier<Optional<Two>> documents) {
    Job known = jobs.get(question);
    if (known != null && known.state.equals(state)) {
      return known;
    }
    if (known != null) {
      known.stop();
    }
    Job fresh = new Job(state, documents);
    jobs.remove(question);
    jobs.put(question, fresh);
    fresh.begin(worker);
    Iterator<Job> oldest = new ArrayList<>(jobs.values()).iterator();
    while (jobs.size() > MOST) {
      Job old = oldest.next();
      old.stop();
      jobs.values().remove(old);
    }
    return fresh;
  }

  /** Stops the work on a question; nothing happens when there is none. */
  public synchronized void stop(Question question) {
    Job job = jobs.get(question);
    if (job != null) {
      job.stop();
    }
  }

  /** Lets a question that was stopped be worked on when it is asked again. */
  public synchronized void again(Question question) {
    Job job = jobs.get(question);
    if (job != null && job.answer() instanceof Stopped) {
      jobs.remove(question);
    }
  }

  @Override
  public synchronized void close() {
    jobs.values().forEach(Job::stop);
    worker.shutdownNow();
  }

  /** The work on one question. */
  private static final class Job {
    private final Object state;
    private final Supplier<Optional<Two>> documents;
    private final long askedNs = System.nanoTime();
    private final CountDownLatch over = new CountDownLatch(1);
    private volatile String words = "waiting for its turn";
    private @Nullable Answer end;
    private @Nullable Future<?> work;

    Job(Object state, Supplier<Optional<Two>> documents) {
      this.state = state;
      this.documents = documents;
    }

    synchronized void begin(ExecutorService worker) {
      work = worker.submit(this::run);
    }

    private void run() {
      try {
        end(answer(documents.get()));
      } catch (PlanningStopped stopped) {
        end(new Stopped());
      } catch (RuntimeException | StackOverflowError failure) {
        LOG.error("Working out what a change does failed.", failure);
        end(
            new Failed(
                "A fault of the program itself stopped this comparison; the log has the"
                    + " details."));
      }
    }

    private Answer answer(Optional<Two> two) {
      if (two.isEmpty()) {
        return new Failed(
            "The kits, equipment, parts and rules as they are now do not fit that older revision of"
                + " the vehicle, so it can't be planned with them. Compare from a later one.");
      }
      Workspace before = two.get().before();
      Workspace after = two.get().after();
      List<KitImpact> kits = new ArrayList<>();
      for (String kit : Impact.kits(before, after)) {
        kits.add(Impact.ofKit(before, after, kit, phase -> at(kit, phase)));
      }
      List<ReleaseImpact> releases = new ArrayList<>();
      for (ReleasedOrder.Result it : two.get().released()) {
        releases.add(release(it, after));
      }
      return new Known(new Impact(kits), releases);
    }

    private ReleaseImpact release(ReleasedOrder.Result result, Workspace after) {
      if (result instanceof ReleasedOrder.Bad bad) {
        return ReleaseImpact.unjudged(bad.kit(), bad.number(), bad.why());
      }
      ReleasedOrder it = ((ReleasedOrder.Good) result).released();
      try {
        return release(it, after);
      } catch (ImpossibleVehicle impossible) {
        return ReleaseImpact.unjudged(
            it.order().kit().id(), it.number(), String.valueOf(impossible.getMessage()));
      }
    }

    private ReleaseImpact release(ReleasedOrder it, Workspace after) {
      String name = it.order().kit().id() + ", release " + it.number();
      Plan plan = RecentPlans.SHARED.plan(it.order(), phase -> at(name, phase));
      Vehicle now =
          after.vehicles().stream()
              .filter(one -> one.id().equals(it.order().vehicle().id()))
              .findFirst()
              .orElseThrow();
      return ReleaseImpact.of(
          new Released(it.number(), it.order(), plan),
          KnownVehicle.of(now),
          PlanningStopped::ifAsked);
    }

    private void at(String kit, PlanPhase phase) {
      words = "kit " + kit + ", " + phase.words();
    }

    /** The first end counts. */
    private synchronized void end(Answer answer) {
      if (end == null) {
        end = answer;
        over.countDown();
      }
    }

    synchronized void stop() {
      end(new Stopped());
      if (work != null) {
        work.cancel(true);
      }
    }

    synchronized Answer answer() {
      return end != null
          ? end
          : new Working(Duration.ofNanos(System.nanoTime() - askedNs).toSeconds(), words);
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
}
