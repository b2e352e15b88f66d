package org.loomwright.planner.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.difference.Weight;
import org.loomwright.planner.plan.ImpossibleVehicle;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.watch.Watch;

/**
 * Which kits a change of vehicles touches, and how: each kit on a changed vehicle planned with the
 * documents before and after it.
 *
 * @param kits every kit on a changed vehicle, those that got worse first, the untouched last
 */
public record Impact(List<KitImpact> kits) {
  public Impact {
    kits =
        kits.stream()
            .sorted(
                Comparator.comparing(KitImpact::weight)
                    .thenComparing(it -> !it.isTouched())
                    .thenComparing(KitImpact::kit))
            .toList();
  }

  /**
   * Compares two states of a workspace, both without problems.
   *
   * @throws org.loomwright.planner.watch.PlanningStopped when the thread is interrupted meanwhile
   */
  public static Impact of(Workspace before, Workspace after) {
    return new Impact(
        kits(before, after).stream().map(it -> ofKit(before, after, it, Watch.NONE)).toList());
  }

  /** Ids of the kits on vehicles that are in both states, but differ; sorted. */
  public static List<String> kits(Workspace before, Workspace after) {
    Map<String, Vehicle> old = new LinkedHashMap<>();
    before.vehicles().forEach(it -> old.put(it.id(), it));
    List<String> changed =
        after.vehicles().stream()
            .filter(it -> old.containsKey(it.id()) && !it.equals(old.get(it.id())))
            .map(Vehicle::id)
            .toList();
    List<String> there = before.kits().stream().map(Kit::id).toList();
    return after.kits().stream()
        .filter(it -> changed.contains(it.vehicle()) && there.contains(it.id()))
        .map(Kit::id)
        .sorted()
        .toList();
  }

  /**
   * Compares one kit in two states of a workspace, both without problems.
   *
   * @param kit a kit of both
   * @param watch is told what planning is at, of the plan before, then of the one after
   * @throws org.loomwright.planner.watch.PlanningStopped when the thread is interrupted meanwhile
   */
  public static KitImpact ofKit(Workspace before, Workspace after, String kit, Watch watch) {
    return KitImpact.of(kit, plan(before, kit, watch), plan(after, kit, watch));
  }

  private static Optional<Plan> plan(Workspace workspace, String kit, Watch watch) {
    if (!(KitOrders.resolve(workspace, kit) instanceof KitOrders.Found found)) {
      throw new IllegalArgumentException("no kit '" + kit + "' in the workspace");
    }
    try {
      return Optional.of(Planner.plan(found.order(), watch));
    } catch (ImpossibleVehicle impossible) {
      return Optional.empty();
    }
  }

  /**
   * All changes in words, those for the worse first: "kit trailer: case A2 is no longer served".
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Weight weight : Weight.values()) {
      for (KitImpact kit : kits) {
        kit.changes().stream()
            .filter(it -> it.weight() == weight)
            .map(Change::words)
            .forEach(it -> lines.add("kit " + kit.kit() + ": " + it));
      }
    }
    return lines;
  }
}
