package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What the map shows: stops and runs between them.
 *
 * @param leads leads of the kit
 * @param stops places, those in use first
 * @param runs runs, those in use first
 */
record RunGraph(List<Lead> leads, List<Stop> stops, List<MapRun> runs) {
  RunGraph {
    leads = List.copyOf(leads);
    stops = List.copyOf(stops);
    runs = List.copyOf(runs);
  }

  /** A run in use before its stops have numbers. */
  private record InUse(String run, String from, String to, double lengthMm, List<String> leads) {}

  /** The graph of a plan. */
  static RunGraph of(Plan plan, Vehicle vehicle) {
    List<Lead> leads = plan.design().leads();
    Map<String, Integer> index = new LinkedHashMap<>();
    leads.forEach(it -> index.put(it.id(), index.size()));
    List<InUse> inUse = inUse(plan, vehicle);
    Map<String, Integer> stopOf = stopOf(plan, vehicle, inUse);
    long used = used(plan, inUse).size();

    EndRows ends = new EndRows(plan, vehicle, index);
    List<Stop> stops = new ArrayList<>();
    for (String id : stopOf.keySet()) {
      Optional<Place> place = vehicle.place(id);
      stops.add(
          new Stop(
              stops.size() + 1,
              id,
              place.map(Place::name).orElse(id),
              stops.size() < used,
              place.flatMap(Place::at).map(RunGraph::spot),
              ends.at(id)));
    }

    List<MapRun> runs = new ArrayList<>();
    for (InUse it : inUse) {
      Optional<Run> run = run(vehicle, it.run());
      boolean turned = run.filter(known -> !known.from().equals(it.from())).isPresent();
      List<Spot> bends = new ArrayList<>();
      run.ifPresent(known -> known.bends().forEach(bend -> bends.add(spot(bend))));
      if (turned) {
        java.util.Collections.reverse(bends);
      }
      runs.add(
          new MapRun(
              it.run(),
              stopOf.getOrDefault(it.from(), 0),
              stopOf.getOrDefault(it.to(), 0),
              it.lengthMm(),
              RunState.USED,
              it.leads().stream().filter(index::containsKey).map(index::get).sorted().toList(),
              bends,
              joints(plan, it)));
    }
    for (Run run : vehicle.runs()) {
      if (inUse.stream().noneMatch(it -> it.run().equals(run.id()))) {
        runs.add(
            new MapRun(
                run.id(),
                stopOf.getOrDefault(run.from(), 0),
                stopOf.getOrDefault(run.to(), 0),
                run.length().mm(),
                forbidden(plan, run) ? RunState.FORBIDDEN : RunState.UNUSED,
                List.of(),
                run.bends().stream().map(RunGraph::spot).toList(),
                List.of()));
      }
    }
    return new RunGraph(leads, stops, runs);
  }

  /** Largest number of leads on one run, or ending at one stop. */
  int mostTracks() {
    int most = 1;
    for (MapRun run : runs) {
      most = Math.max(most, run.leads().size());
    }
    for (int i = 0; i < stops.size(); i++) {
      most = Math.max(most, ending(i).size());
    }
    return most;
  }

  /** Leads that end at a stop and come to it over a run. */
  List<Integer> ending(int stop) {
    List<Integer> ending = new ArrayList<>();
    for (int lead = 0; lead < leads.size(); lead++) {
      int over = 0;
      for (MapRun run : runs) {
        if ((run.from() == stop || run.to() == stop) && run.leads().contains(lead)) {
          over++;
        }
      }
      if (over % 2 == 1) {
        ending.add(lead);
      }
    }
    return ending;
  }

  private static List<InUse> inUse(Plan plan, Vehicle vehicle) {
    List<InUse> inUse = new ArrayList<>();
    for (Bundle it : plan.harness().bundles()) {
      inUse.add(new InUse(it.run(), it.from(), it.to(), it.lengthMm(), it.leads()));
    }
    if (!inUse.isEmpty()) {
      return inUse;
    }
    // A plan without bundles still says along which runs its leads go.
    for (Run run : vehicle.runs()) {
      List<String> along =
          plan.design().leads().stream()
              .filter(it -> it.runs().contains(run.id()))
              .map(Lead::id)
              .toList();
      if (!along.isEmpty()) {
        inUse.add(new InUse(run.id(), run.from(), run.to(), run.length().mm(), along));
      }
    }
    return inUse;
  }

  private static Set<String> used(Plan plan, List<InUse> inUse) {
    Set<String> used = new LinkedHashSet<>();
    inUse.forEach(it -> used.addAll(List.of(it.from(), it.to())));
    for (Lead lead : plan.design().leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        used.add(end.place());
      }
    }
    plan.design().joints().forEach(it -> used.add(it.place()));
    return used;
  }

  /** Places in the order of the vehicle's document, those in use first. */
  private static Map<String, Integer> stopOf(Plan plan, Vehicle vehicle, List<InUse> inUse) {
    Set<String> used = used(plan, inUse);
    Set<String> order = new LinkedHashSet<>();
    vehicle.places().stream().map(Place::id).filter(used::contains).forEach(order::add);
    order.addAll(used);
    Set<String> joined = new LinkedHashSet<>();
    vehicle.runs().forEach(it -> joined.addAll(List.of(it.from(), it.to())));
    vehicle.places().stream().map(Place::id).filter(joined::contains).forEach(order::add);
    order.addAll(joined);
    Map<String, Integer> stopOf = new LinkedHashMap<>();
    order.forEach(it -> stopOf.put(it, stopOf.size()));
    return stopOf;
  }

  private static List<MapRun.JointDot> joints(Plan plan, InUse run) {
    List<MapRun.JointDot> dots = new ArrayList<>();
    for (JointSpot spot : plan.harness().joints()) {
      if (spot.run().filter(run.run()::equals).isPresent()) {
        double share = Math.min(1, Math.max(0, spot.atMm() / run.lengthMm()));
        dots.add(
            new MapRun.JointDot(spot.joint(), spot.place().equals(run.from()) ? share : 1 - share));
      }
    }
    return dots;
  }

  private static boolean forbidden(Plan plan, Run run) {
    return run.restraint()
        || run.highVoltage()
        || plan.harness().runsLeft().stream()
            .anyMatch(
                it ->
                    it.matches(
                        "(?s)(run )?" + java.util.regex.Pattern.quote(run.id()) + "(?![\\w-]).*"));
  }

  private static Optional<Run> run(Vehicle vehicle, String id) {
    return vehicle.runs().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private static Spot spot(PlanSpot it) {
    return new Spot(it.along().mm(), it.down().mm());
  }
}
