package org.loomwright.planner.route;

import java.util.List;
import org.loomwright.model.vehicle.Run;

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
}
