package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.VehicleNote;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;
import org.loomwright.model.stock.StockState;

/**
 * Each serial number is given once, whichever kit it is for; the kit goes into one vehicle, and is
 * not on the shelf then.
 */
final class Serials {
  private final List<Problem> problems;
  private final Map<String, Made> made = new HashMap<>();
  private final Map<String, Job> fitted = new HashMap<>();

  private Serials(List<Problem> problems) {
    this.problems = problems;
  }

  /** A kit that was made. */
  private record Made(Batch batch, StockItem item, String where, boolean sound) {}

  /** A job with the scope it is in. */
  private record Named(Scope scope, Job job) {}

  static void check(List<Source> sources, List<Problem> problems) {
    Serials serials = new Serials(problems);
    List<Named> jobs = new ArrayList<>();
    for (Source source : sources) {
      Scope scope = new Scope(source, problems);
      if (source.bound().document().orElse(null) instanceof Batch batch) {
        batch.items().forEach(it -> serials.made(scope, batch, it));
      } else if (source.bound().document().orElse(null) instanceof Job job && scope.sound(job)) {
        jobs.add(new Named(scope, job));
      }
    }
    jobs.forEach(it -> serials.named(it, jobs));
  }

  private void made(Scope scope, Batch batch, StockItem item) {
    String here = "batch '" + batch.id() + "', " + scope.path(item);
    Made first =
        item.serial().isEmpty()
            ? null
            : made.putIfAbsent(item.serial(), new Made(batch, item, here, scope.sound(item)));
    if (first != null) {
      scope.problem(
          item,
          "serial",
          item.serial(),
          "serial number '" + item.serial() + "' is already given in " + first.where());
    }
  }

  private void named(Named it, List<Named> jobs) {
    Job job = it.job();
    if (job.serial().isEmpty() || job.state() == JobState.GIVEN_UP) {
      return;
    }
    String serial = job.serial().get();
    Optional<String> wrong =
        Optional.ofNullable(fitted.putIfAbsent(serial, job))
            .filter(first -> !isSameVehicle(first, job))
            .map(
                first ->
                    "job '"
                        + first.id()
                        + "' has serial number '"
                        + serial
                        + "' too, on another vehicle; put one of them right, or give one up")
            .or(
                () ->
                    Optional.ofNullable(made.get(serial))
                        .filter(Made::sound)
                        .flatMap(kit -> elsewhere(job, kit, jobs)));
    wrong.ifPresent(words -> it.scope().problem(job, "serial", serial, words));
  }

  /** A vehicle that comes back has another job with the same kit. */
  private static boolean isSameVehicle(Job one, Job two) {
    String note = VehicleNote.key(one.vehicleNote());
    return !note.isEmpty() && note.equals(VehicleNote.key(two.vehicleNote()));
  }

  /** Where its batch has the kit, if it can't be there. */
  private static Optional<String> elsewhere(Job job, Made kit, List<Named> jobs) {
    StockItem item = kit.item();
    if (job.state() == JobState.SURVEY) {
      return Optional.empty();
    }
    String where = kit.where() + " says that serial number '" + item.serial() + "' ";
    if (item.state() == StockState.ON_THE_SHELF || item.state() == StockState.SCRAPPED) {
      return Optional.of(
          where
              + "is "
              + item.state().words()
              + "; put the number right, or write there that it is fitted, with this job");
    }
    return item.job()
        .filter(id -> item.state() == StockState.FITTED && !id.equals(job.id()))
        .flatMap(id -> jobs.stream().map(Named::job).filter(it -> it.id().equals(id)).findFirst())
        .filter(other -> !isSameVehicle(other, job))
        .map(other -> where + "is fitted in job '" + other.id() + "'; put one of them right");
  }
}
