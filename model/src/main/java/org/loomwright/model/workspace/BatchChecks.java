package org.loomwright.model.workspace;

import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;
import org.loomwright.model.stock.StockState;

/** Checks a batch: that its kit is known, and that the jobs it names say the same. */
final class BatchChecks {
  private final Scope scope;
  private final Batch batch;
  private final Library library;

  private BatchChecks(Scope scope, Batch batch, Library library) {
    this.scope = scope;
    this.batch = batch;
    this.library = library;
  }

  static void check(Scope scope, Batch batch, Library library) {
    new BatchChecks(scope, batch, library).checkAll();
  }

  private void checkAll() {
    scope.reference(batch, "kit", library.documents(), Sort.KIT, batch.kit());
    Days.check(scope, batch, "made", batch.made());
    if (scope.sound(batch) && batch.release() == 0) {
      scope.problem(
          batch, "release", "0", "releases are numbered from 1: say which one was made from");
    }
    if (scope.sound(batch) && batch.items().isEmpty()) {
      scope.problem(
          batch, "items", "", "a batch lists each kit that was made, by its serial number");
    }
    batch.items().forEach(this::item);
  }

  private void item(StockItem item) {
    if (item.job().isEmpty() || !scope.sound(item)) {
      return;
    }
    String id = item.job().get();
    if (item.state() != StockState.FITTED) {
      scope.problem(
          item,
          "job",
          id,
          "a kit that is "
              + item.state().words()
              + " has no job; write \"state\": \"fitted\", or leave the job out");
      return;
    }
    scope.reference(item, "job", library.documents(), Sort.JOB, id);
    library
        .find(Sort.JOB, id)
        .filter(it -> scope.sound(batch))
        .flatMap(it -> it.document(Job.class))
        .ifPresent(it -> agrees(item, it));
  }

  private void agrees(StockItem item, Job job) {
    agree(item, job, "kit", Optional.of(job.kit()), batch.kit());
    agree(item, job, "release", job.release().map(String::valueOf), "" + batch.release());
    agree(item, job, "part number", job.partNumber(), batch.partNumber());
    agree(item, job, "serial number", job.serial(), item.serial());
  }

  /** What a job has left open can't contradict. */
  private void agree(StockItem item, Job job, String what, Optional<String> inJob, String inBatch) {
    inJob
        .filter(it -> !it.isEmpty() && !it.equals(inBatch))
        .ifPresent(
            it ->
                scope.problem(
                    item,
                    "job",
                    job.id(),
                    "job '"
                        + job.id()
                        + "' says "
                        + what
                        + " '"
                        + it
                        + "', but here it is '"
                        + inBatch
                        + "'; put one of them right"));
  }
}
