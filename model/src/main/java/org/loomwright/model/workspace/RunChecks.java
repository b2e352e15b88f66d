package org.loomwright.model.workspace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** Checks runs and the order of openings for circles, and finds what runs reach. */
final class RunChecks {
  private RunChecks() {}

  static void check(Scope scope, Vehicle vehicle, VehicleNames names) {
    Map<String, String> seen = new HashMap<>();
    for (Run run : vehicle.runs()) {
      scope.reference(run, "from", names.names(), Sort.PLACE, run.from());
      scope.reference(run, "to", names.names(), Sort.PLACE, run.to());
      if (!scope.sound(run)) {
        continue;
      }
      if (run.from().equals(run.to())) {
        scope.problem(
            run,
            "to",
            run.to(),
            "the run is circular: it ends at '"
                + run.to()
                + "', where it starts; a run leads from"
                + " one place to another");
      }
      if (run.tolerance().mm() >= run.length().mm()) {
        scope.problem(
            run,
            "tolerance",
            run.tolerance().text(),
            "the tolerance must be less than the length, which is \"" + run.length() + "\"");
      }
      String first = seen.putIfAbsent(way(run), scope.path(run));
      if (first != null) {
        scope.problem(
            run,
            "",
            run.id(),
            "the run '" + run.id() + "' is the same as " + first + "; keep one of them");
      }
    }
    openingCircles(scope, vehicle);
  }

  /** Equal for runs that join the same places along the same things. */
  private static String way(Run run) {
    boolean forward = run.from().compareTo(run.to()) <= 0;
    List<String> ends = forward ? List.of(run.from(), run.to()) : List.of(run.to(), run.from());
    return List.of(ends, run.follows(), Set.copyOf(run.passes())).toString();
  }

  /** The places that usable runs reach from the given ones, these included. */
  static Set<String> reached(Vehicle vehicle, Set<String> from) {
    Set<String> reached = new HashSet<>(from);
    Deque<String> open = new ArrayDeque<>(from);
    while (!open.isEmpty()) {
      String place = open.remove();
      for (Run run : vehicle.runs()) {
        if (run.restraint() || run.highVoltage()) {
          continue;
        }
        if (run.from().equals(place) && reached.add(run.to())) {
          open.add(run.to());
        }
        if (run.to().equals(place) && reached.add(run.from())) {
          open.add(run.from());
        }
      }
    }
    return reached;
  }

  private static void openingCircles(Scope scope, Vehicle vehicle) {
    Set<String> told = new HashSet<>();
    Set<String> clear = new HashSet<>();
    for (Opening opening : vehicle.openings()) {
      List<String> circle = circle(vehicle, opening.id(), new LinkedHashSet<>(), clear);
      if (circle.isEmpty() || !circle.contains(opening.id()) || told.contains(opening.id())) {
        continue;
      }
      told.addAll(circle);
      List<String> next = new ArrayList<>(circle.subList(1, circle.size()));
      next.add(circle.get(0));
      scope.problem(
          opening,
          "behind",
          String.join(", ", opening.behind()),
          "the openings go in a circle, so none can be opened first: "
              + circle.get(0)
              + " is behind "
              + String.join(", which is behind ", next));
    }
  }

  /**
   * The first circle of openings met on the way from one; empty when there is none.
   *
   * @param way openings on the way to it
   * @param clear openings that lead to no circle, added to
   */
  private static List<String> circle(
      Vehicle vehicle, String id, Set<String> way, Set<String> clear) {
    if (clear.contains(id)) {
      return List.of();
    }
    if (!way.add(id)) {
      List<String> all = new ArrayList<>(way);
      return all.subList(all.indexOf(id), all.size());
    }
    List<String> behind = vehicle.opening(id).map(Opening::behind).orElse(List.of());
    for (String next : behind) {
      List<String> found = circle(vehicle, next, way, clear);
      if (!found.isEmpty()) {
        return found;
      }
    }
    way.remove(id);
    clear.add(id);
    return List.of();
  }
}
