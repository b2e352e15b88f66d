package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Plan;

/** Runs taken up or left, and bundles of another diameter. */
final class BundleChanges {
  /** Finer than anybody measures a bundle, mm. */
  private static final double SEEN_MM = 0.05;

  private BundleChanges() {}

  private record Pair(Bundle before, Bundle after) {
    double grown() {
      return after.overallMm() - before.overallMm();
    }

    String words() {
      return Words.plain(after.overallMm(), 2)
          + " mm (was "
          + Words.figure(before.overallMm(), after.overallMm(), "mm")
          + ")";
    }
  }

  static List<Change> of(Two two) {
    List<Change> changes = new ArrayList<>();
    runs(two.before(), two.after(), "now also laid along ", changes);
    runs(two.after(), two.before(), "no longer laid along ", changes);
    List<Pair> grown = new ArrayList<>();
    for (Bundle after : two.after().harness().bundles()) {
      find(two.before(), after.run())
          .map(it -> new Pair(it, after))
          .filter(it -> Math.abs(it.grown()) >= SEEN_MM)
          .ifPresent(grown::add);
    }
    if (grown.isEmpty()) {
      return changes;
    }
    if (grown.size() <= two.detail()) {
      changes.add(
          Change.neutral(
              Topic.LEADS,
              "bundle over its covering: "
                  + Words.list(
                      grown.stream()
                          .map(it -> "on " + it.after().run() + " " + it.words())
                          .toList())));
    } else {
      Pair most =
          grown.stream().max(Comparator.comparingDouble(it -> Math.abs(it.grown()))).orElseThrow();
      changes.add(
          Change.neutral(
              Topic.LEADS,
              grown.size()
                  + " bundles have another diameter, most on "
                  + most.after().run()
                  + ": "
                  + most.words()));
    }
    return changes;
  }

  private static void runs(Plan was, Plan is, String words, List<Change> changes) {
    List<String> runs =
        is.harness().bundles().stream()
            .map(Bundle::run)
            .filter(it -> find(was, it).isEmpty())
            .toList();
    if (!runs.isEmpty()) {
      changes.add(Change.neutral(Topic.LEADS, words + Words.list(runs)));
    }
  }

  private static Optional<Bundle> find(Plan plan, String run) {
    return plan.harness().bundles().stream().filter(it -> it.run().equals(run)).findFirst();
  }
}
