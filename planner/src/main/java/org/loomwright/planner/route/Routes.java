package org.loomwright.planner.route;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.WeightedMultigraph;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** Paths of least weighed length over the runs that a bundle may follow; see {@link Laying}. */
public final class Routes {
  private final Vehicle vehicle;
  private final Laying laying;
  private final Set<String> places = new HashSet<>();
  private final WeightedMultigraph<String, Leg> graph = new WeightedMultigraph<>(Leg.class);
  private final Map<String, Optional<Route>> known = new HashMap<>();

  /** One run as an edge of its own, so that parallel runs stay apart. */
  private record Leg(Run run) {}

  /** The runs of a vehicle under the rules of a shop. */
  public Routes(Vehicle vehicle, Rules rules) {
    this.vehicle = vehicle;
    this.laying = new Laying(vehicle, rules);
    for (Place place : vehicle.places()) {
      places.add(place.id());
      graph.addVertex(place.id());
    }
    for (Run run : laying.usable()) {
      Leg leg = new Leg(run);
      graph.addEdge(run.from(), run.to(), leg);
      graph.setEdgeWeight(leg, laying.weighedMm(run));
    }
  }

  /** Which runs may be used, and how they weigh. */
  public Laying laying() {
    return laying;
  }

  /** The path of least weighed length, empty when no allowed run leads there. */
  public Optional<Route> between(String from, String to) {
    return known.computeIfAbsent(from + " " + to, key -> search(from, to));
  }

  private Optional<Route> search(String from, String to) {
    if (!places.contains(from) || !places.contains(to)) {
      return Optional.empty();
    }
    GraphPath<String, Leg> path = DijkstraShortestPath.findPathBetween(graph, from, to);
    return path == null
        ? Optional.empty()
        : Optional.of(
            Route.along(vehicle, from, path.getEdgeList().stream().map(Leg::run).toList()));
  }
}
