package org.loomwright.planner.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.WeightedMultigraph;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Shortest paths over the runs of a vehicle. Runs along restraint or high-voltage wiring are never
 * used, however short.
 */
public final class Routes {
  private final Map<String, Place> places = new LinkedHashMap<>();
  private final WeightedMultigraph<String, Leg> graph = new WeightedMultigraph<>(Leg.class);
  private final Map<String, Optional<Route>> known = new HashMap<>();

  /** One run as an edge of its own, so that parallel runs stay apart. */
  private record Leg(Run run) {}

  /** The runs of a vehicle. */
  public Routes(Vehicle vehicle) {
    for (Place place : vehicle.places()) {
      places.put(place.id(), place);
      graph.addVertex(place.id());
    }
    for (Run run : vehicle.runs()) {
      if (!run.restraint() && !run.highVoltage() && !run.from().equals(run.to())) {
        Leg leg = new Leg(run);
        graph.addEdge(run.from(), run.to(), leg);
        graph.setEdgeWeight(leg, run.length().mm());
      }
    }
  }

  /** The shortest path, empty when no allowed run leads there. */
  public Optional<Route> between(String from, String to) {
    return known.computeIfAbsent(from + " " + to, key -> search(from, to));
  }

  private Optional<Route> search(String from, String to) {
    if (!places.containsKey(from) || !places.containsKey(to)) {
      return Optional.empty();
    }
    GraphPath<String, Leg> path = DijkstraShortestPath.findPathBetween(graph, from, to);
    if (path == null) {
      return Optional.empty();
    }
    List<Run> runs = new ArrayList<>();
    double ambientC = Double.NEGATIVE_INFINITY;
    double worst = 0;
    double squares = 0;
    for (Leg leg : path.getEdgeList()) {
      Run run = leg.run();
      runs.add(run);
      worst += run.tolerance().mm();
      squares += run.tolerance().mm() * run.tolerance().mm();
      if (run.ambient().isPresent()) {
        ambientC = Math.max(ambientC, run.ambient().get().celsius());
      }
    }
    for (String place : path.getVertexList()) {
      Place at = places.get(place);
      if (at != null) {
        ambientC = Math.max(ambientC, at.ambient().celsius());
      }
    }
    return Optional.of(
        new Route(
            runs, path.getVertexList(), path.getWeight(), worst, Math.sqrt(squares), ambientC));
  }
}
