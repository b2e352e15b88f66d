package org.loomwright.model.workspace;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.json.Paths;
import org.loomwright.model.kit.Kit;

/**
 * Checks a job. The documents of one that goes on must be there. One that is over is a record of
 * its day: the kit may have been given up since, a finding may have changed the vehicle. What is
 * answered on a vehicle goes by the release of the kit where the job names one, and that may rest
 * on an older revision of the vehicle than the one at hand.
 */
final class JobChecks {
  private final Scope scope;
  private final Job job;
  private final Library library;

  private JobChecks(Scope scope, Job job, Library library) {
    this.scope = scope;
    this.job = job;
    this.library = library;
  }

  static void check(Scope scope, Job job, Library library) {
    new JobChecks(scope, job, library).checkAll();
  }

  private void checkAll() {
    Names documents = library.documents();
    scope.reference(job, "vehicle", documents, Sort.VEHICLE, job.vehicle());
    Days.check(scope, job, "when", job.when());
    release();
    signOff();
    once("done", job.done(), "this step");
    scope.unique(job.taken(), "reading", it -> it.reading());
    deviations(documents);
    Photos.once(scope, job.photos());
    if (!job.isOver()) {
      scope.reference(job, "kit", documents, Sort.KIT, job.kit());
      vehicle();
      answers();
    }
  }

  private void release() {
    if (job.release().filter(it -> it == 0).isPresent()) {
      scope.problem(
          job, "release", "0", "releases are numbered from 1; leave it out while none is");
    }
  }

  private void signOff() {
    job.signOff().ifPresent(it -> Days.check(scope, it, "when", it.when()));
    if (!scope.sound(job)) {
      return;
    }
    if (job.state() != JobState.SIGNED_OFF) {
      job.signOff()
          .ifPresent(
              it ->
                  scope.problem(
                      job,
                      "signOff",
                      it.by(),
                      "a job that is "
                          + job.state().words()
                          + " is not signed; leave the sign-off out, or write \"state\":"
                          + " \"signed-off\""));
      return;
    }
    if (job.signOff().isEmpty()) {
      scope.problem(job, "signOff", "", "a job that is signed off says who signed it, and when");
    }
    if (job.partNumber().isEmpty()) {
      scope.problem(
          job, "partNumber", "", "a job that is signed off says which part number was fitted");
    }
  }

  private void deviations(Names documents) {
    for (Deviation it : job.deviations()) {
      if (job.state() == JobState.SIGNED_OFF && it.why().isEmpty() && scope.sound(it)) {
        scope.problem(
            it,
            "why",
            "",
            "before a job is signed off, each deviation says why it may stay, or what was done");
      }
      it.finding()
          .filter(id -> !job.isOver())
          .ifPresent(id -> scope.reference(it, "finding", documents, Sort.FINDING, id));
    }
  }

  private void vehicle() {
    library
        .find(Sort.KIT, job.kit())
        .flatMap(it -> it.document(Kit.class))
        .map(Kit::vehicle)
        .filter(it -> !it.isEmpty() && !it.equals(job.vehicle()))
        .filter(it -> library.find(Sort.VEHICLE, job.vehicle()).isPresent())
        .ifPresent(
            it ->
                scope.problem(
                    job,
                    "kit",
                    job.kit(),
                    "kit '" + job.kit() + "' is for vehicle '" + it + "', not for this one"));
  }

  private void answers() {
    if (job.release().isPresent()) {
      return;
    }
    library
        .find(Sort.VEHICLE, job.vehicle())
        .map(library::names)
        .ifPresent(names -> job.answers().forEach((trait, value) -> answer(trait, value, names)));
  }

  private void answer(String trait, String value, VehicleNames names) {
    if (!value.isEmpty()) {
      names
          .wrongSeen(trait, value)
          .ifPresent(message -> scope.problem(job, Paths.key("answers", trait), value, message));
    }
  }

  private void once(String key, List<String> items, String what) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < items.size(); i++) {
      if (!items.get(i).isEmpty() && !seen.add(items.get(i))) {
        scope.problem(
            job,
            Paths.item(key, i),
            items.get(i),
            what + " is there twice: '" + items.get(i) + "'; once is enough");
      }
    }
  }
}
