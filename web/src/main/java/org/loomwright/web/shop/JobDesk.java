package org.loomwright.web.shop;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.store.Release;
import org.loomwright.store.Store;

/**
 * Plans of the kits that jobs are about: that of the release a job names, made of the documents as
 * they were released, else that of the documents as they are now. May be shared between threads.
 */
public final class JobDesk implements AutoCloseable {
  /** Releases whose plans are kept; older ones are planned again when they are asked for. */
  private static final int MOST = 4;

  /** What a job is worked by. */
  public sealed interface Basis {}

  /** The plan. */
  public record Known(KitPages pages) implements Basis {}

  /**
   * The plan is being made.
   *
   * @param words what is done just now
   */
  public record Working(String words) implements Basis {}

  /**
   * There is no plan.
   *
   * @param why a full sentence for a person
   * @param stopped whether a person stopped its planning, so that it can be begun anew
   */
  public record Missing(String why, boolean stopped) implements Basis {
    /** None, for a reason that planning anew does not mend. */
    public Missing(String why) {
      this(why, false);
    }
  }

  private record Key(String kit, int release) {}

  private record Seat(Optional<KitOrder> order, PlanDesk desk) {}

  private final PlanDesk current;
  private final Map<Key, Seat> seats = new LinkedHashMap<>();

  /**
   * A desk with nothing on it.
   *
   * @param current plans of the documents as they are now
   */
  public JobDesk(PlanDesk current) {
    this.current = current;
  }

  /**
   * What a job is worked by; begins to plan where that has not been done, and waits a little.
   *
   * @param store where releases are kept; absent where there are none
   * @param patience longest wait
   */
  public Basis soon(Job job, Shop shop, Optional<Store> store, Duration patience) {
    Optional<KitOrder> now = shop.order(Href.part(job.kit()));
    if (job.release().isEmpty()) {
      return now.map(it -> basis(current.soon(it, patience)))
          .orElseGet(() -> new Missing("Kit " + job.kit() + " is no longer on file."));
    }
    int number = job.release().get();
    Optional<Release> release =
        store.flatMap(
            it ->
                it.releases().of(job.kit()).stream()
                    .filter(one -> one.number() == number)
                    .findFirst());
    if (release.isEmpty()) {
      Missing missing =
          new Missing(
              "Release "
                  + number
                  + " of kit "
                  + job.kit()
                  + " is not kept here, and its guide is not that of the kit as it is now.");
      // A workspace without its releases can still have the very guide the job was begun by.
      return now.map(it -> basis(current.soon(it, patience)))
          .filter(it -> !(it instanceof Known known) || isGuideOf(job, known.pages()))
          .orElse(missing);
    }
    Seat seat = seat(store.orElseThrow(), release.get());
    return seat.order()
        // Where nothing was changed since the release, one plan serves both.
        .map(
            it ->
                now.filter(it::equals).isPresent()
                    ? basis(current.soon(it, patience))
                    : unstopped(basis(seat.desk().soon(it, patience))))
        .orElseGet(
            () ->
                new Missing(
                    "The documents of release "
                        + number
                        + " of kit "
                        + job.kit()
                        + " can't be read any more; the papers of the release are still kept."));
  }

  private static boolean isGuideOf(Job job, KitPages pages) {
    return job.guide().filter(it -> it.equals(GuidePrint.of(pages.plan()))).isPresent();
  }

  private static Basis basis(Planned planned) {
    if (planned instanceof Planned.Done done) {
      return new Known(done.pages());
    }
    if (planned instanceof Planned.Failed failed) {
      return new Missing(failed.why());
    }
    return planned instanceof Planned.Working working
        ? new Working(working.phaseWords())
        : new Missing("The planning of the kit was stopped.", true);
  }

  /** Nobody stops the planning of a release; it only makes room for others and begins anew. */
  private static Basis unstopped(Basis basis) {
    return basis instanceof Missing missing && missing.stopped()
        ? new Working("waiting for its turn")
        : basis;
  }

  private synchronized Seat seat(Store store, Release release) {
    Key key = new Key(release.kit(), (int) release.number());
    Seat known = seats.remove(key);
    Seat seat =
        known == null
            ? new Seat(ReleasedOrder.of(store, release).map(ReleasedOrder::order), new PlanDesk())
            : known;
    seats.put(key, seat);
    Iterator<Seat> oldest = new ArrayList<>(seats.values()).iterator();
    while (seats.size() > MOST) {
      Seat old = oldest.next();
      old.desk().close();
      seats.values().remove(old);
    }
    return seat;
  }

  @Override
  public synchronized void close() {
    seats.values().forEach(it -> it.desk().close());
    seats.clear();
  }
}
