package org.loomwright.cli.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.cli.plan.summary.Summary;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.Planner;

/**
 * A kit that was planned, and its pack where one was asked for.
 *
 * @param order kit with its documents
 * @param plan its plan
 * @param pack files of the pack, empty when none was written
 */
record Planned(KitOrder order, Plan plan, List<Path> pack) {
  Planned {
    pack = List.copyOf(pack);
  }

  /**
   * Plans a kit and writes its pack.
   *
   * @param verify whether every network is solved and checked a second time
   * @param folder where the pack goes, empty for none
   * @param err takes the progress, when it is a terminal
   */
  static Planned of(KitOrder order, boolean verify, Optional<PackFolder> folder, PrintWriter err) {
    Plan plan;
    try (Progress progress = Progress.of(err, "Planning " + order.kit().id())) {
      plan = verify ? Planner.verified(order) : Planner.plan(order);
    }
    if (folder.isEmpty()) {
      return new Planned(order, plan, List.of());
    }
    try (Progress progress = Progress.of(err, "Writing the pack of " + order.kit().id())) {
      return new Planned(order, plan, folder.get().write(order, plan));
    }
  }

  /** The summary, and where the pack is. */
  String summary() {
    return Summary.of(order, plan, !pack.isEmpty()) + whereThePackIs();
  }

  /** What matters most, and where the pack is. */
  String brief() {
    return Summary.brief(order, plan, !pack.isEmpty()) + whereThePackIs();
  }

  private String whereThePackIs() {
    if (pack.isEmpty()) {
      return "";
    }
    Path folder = Optional.ofNullable(pack.get(0).getParent()).orElse(Path.of("."));
    return "\nThe pack is in "
        + folder
        + ": "
        + pack.stream().map(it -> it.getFileName().toString()).collect(Collectors.joining(", "))
        + "\n";
  }

  /** {@link ExitCode#DONE} when every kit can be released. */
  static int exitCode(List<Planned> all) {
    return all.stream().allMatch(it -> it.plan().releasable())
        ? ExitCode.DONE
        : ExitCode.CHECK_FAILS;
  }
}
