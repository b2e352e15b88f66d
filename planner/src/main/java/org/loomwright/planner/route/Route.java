package org.loomwright.planner.route;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A path from one place to another.
 *
 * @param runs runs in order; empty when both ends are the same place
 * @param places places in order, both ends included
 * @param lengthMm length along the runs
 * @param toleranceWorstMm how far it may be off when all runs err the same way
 * @param toleranceRssMm root of the sum of squares of the runs' tolerances
 * @param ambientC highest ambient temperature on the way, both ends included
 */
public record Route(
    List<Run> runs,
    List<String> places,
    double lengthMm,
    double toleranceWorstMm,
    double toleranceRssMm,
    double ambientC) {
  public Route {
    runs = List.copyOf(runs);
    places = List.copyOf(places);
  }

  /**
   * The path over the given runs.
   *
   * @param from place where it starts
   * @param runs runs in order, each starting where the last one ended
   * @throws IllegalArgumentException when a run does not go on where the last one ended
   */
  public static Route along(Vehicle vehicle, String from, List<Run> runs) {
    List<String> places = new ArrayList<>(List.of(from));
    double ambientC = ambientC(vehicle, from);
    double lengthMm = 0;
    double worst = 0;
    double squares = 0;
    for (Run run : runs) {
      String at = places.get(places.size() - 1);
      if (!run.from().equals(at) && !run.to().equals(at)) {
        throw new IllegalArgumentException("run " + run.id() + " does not start at " + at);
      }
      String next = run.from().equals(at) ? run.to() : run.from();
      places.add(next);
      lengthMm += run.length().mm();
      worst += run.tolerance().mm();
      squares += run.tolerance().mm() * run.tolerance().mm();
      ambientC = Math.max(ambientC, ambientC(vehicle, next));
      if (run.ambient().isPresent()) {
        ambientC = Math.max(ambientC, run.ambient().get().celsius());
      }
    }
    return new Route(runs, places, lengthMm, worst, Math.sqrt(squares), ambientC);
  }

  private static double ambientC(Vehicle vehicle, String place) {
    return vehicle
        .place(place)
        .map((Place it) -> it.ambient().celsius())
        .orElseThrow(() -> new IllegalArgumentException("no place " + place));
  }
}
