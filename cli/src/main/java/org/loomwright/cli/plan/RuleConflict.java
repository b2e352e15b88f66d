package org.loomwright.cli.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.planner.builds.Builds;

/** Finds rules of a vehicle that leave no build, however many builds the traits would allow. */
final class RuleConflict {
  private RuleConflict() {}

  /**
   * The fewest rules that together exclude every build, as one problem; empty when a build is left.
   *
   * @param document name of the vehicle's file
   * @param vehicle vehicle, unknown facts already turned into traits
   */
  static Optional<Problem> in(String document, Vehicle vehicle) {
    if (leavesABuild(vehicle, vehicle.rules())) {
      return Optional.empty();
    }
    // Rules that are not needed for the contradiction would only distract.
    List<Exclusion> core = new ArrayList<>(vehicle.rules());
    for (Exclusion rule : vehicle.rules()) {
      List<Exclusion> fewer = new ArrayList<>(core);
      fewer.remove(rule);
      if (!leavesABuild(vehicle, fewer)) {
        core = fewer;
      }
    }
    String named =
        core.stream()
            .map(rule -> "rules[" + vehicle.rules().indexOf(rule) + "] (" + rule.reason() + ")")
            .collect(Collectors.joining(" and "));
    boolean single = core.size() == 1;
    return Optional.of(
        new Problem(
            document,
            "rules",
            "",
            named
                + (single ? " excludes" : " together exclude")
                + " every build, so there is no vehicle left; weaken "
                + (single ? "it" : "one of them")));
  }

  private static boolean leavesABuild(Vehicle vehicle, List<Exclusion> rules) {
    return !Builds.of(with(vehicle, rules)).possible().isEmpty();
  }

  private static Vehicle with(Vehicle it, List<Exclusion> rules) {
    return new Vehicle(
        it.id(),
        it.name(),
        it.revision(),
        it.supply(),
        it.supplyLowest(),
        it.source(),
        it.battery(),
        it.batteryOpenings(),
        it.restraintWait(),
        it.sleepWait(),
        it.splicePolicy(),
        it.traits(),
        rules,
        it.openings(),
        it.planView(),
        it.places(),
        it.runs(),
        it.connectors(),
        it.fuseBlocks(),
        it.grounds(),
        it.circuits());
  }
}
