package org.loomwright.planner.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.vehicle.Hazard;
import org.loomwright.model.vehicle.Nearby;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.fixture.Shop;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.plan.With;

/** Paths on small random vehicles against all paths that visit no place twice. */
class RoutesOracleTest {
  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void noAllowedPathIsShorter(@ForAll long seed) {
    Vehicle vehicle = draw(new Draw(seed));
    Routes routes = new Routes(vehicle, Shop.rules());
    boolean choices = false;
    boolean cutOff = false;
    for (Place from : vehicle.places()) {
      for (Place to : vehicle.places()) {
        List<List<Run>> all = new ArrayList<>();
        paths(vehicle, from.id(), to.id(), new HashSet<>(Set.of(from.id())), List.of(), all);
        Optional<Route> found = routes.between(from.id(), to.id());
        assertThat(found.isPresent()).as("%s to %s", from.id(), to.id()).isEqualTo(!all.isEmpty());
        choices |= all.size() > 1;
        cutOff |= all.isEmpty();
        found.ifPresent(route -> check(vehicle, route, from.id(), to.id(), all));
      }
    }
    Statistics.label("several paths")
        .collect(choices)
        .coverage(c -> c.check(true).percentage(p -> p > 50));
    Statistics.label("a place cut off")
        .collect(cutOff)
        .coverage(c -> c.check(true).percentage(p -> p > 10));
  }

  private static void check(
      Vehicle vehicle, Route route, String from, String to, List<List<Run>> all) {
    double least =
        all.stream()
            .mapToDouble(path -> path.stream().mapToDouble(run -> weighedMm(vehicle, run)).sum())
            .min()
            .orElseThrow();
    assertThat(route.runs().stream().mapToDouble(run -> weighedMm(vehicle, run)).sum())
        .isCloseTo(least, within(1e-9));
    assertThat(route.places()).startsWith(from).endsWith(to).doesNotHaveDuplicates();
    assertThat(route.runs()).allMatch(RoutesOracleTest::allowed);
    double lengthMm = 0;
    double worstMm = 0;
    double squares = 0;
    double hottestC = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < route.runs().size(); i++) {
      Run run = route.runs().get(i);
      assertThat(Set.of(run.from(), run.to()))
          .isEqualTo(Set.of(route.places().get(i), route.places().get(i + 1)));
      lengthMm += run.length().mm();
      worstMm += run.tolerance().mm();
      squares += Math.pow(run.tolerance().mm(), 2);
      hottestC = Math.max(hottestC, run.ambient().map(Temperature::celsius).orElse(hottestC));
    }
    for (String place : route.places()) {
      hottestC = Math.max(hottestC, vehicle.place(place).orElseThrow().ambient().celsius());
    }
    assertThat(route.lengthMm()).isCloseTo(lengthMm, within(1e-9));
    assertThat(route.toleranceWorstMm()).isCloseTo(worstMm, within(1e-9));
    assertThat(route.toleranceRssMm()).isCloseTo(Math.sqrt(squares), within(1e-9));
    assertThat(route.ambientC()).isEqualTo(hottestC);
  }

  private static void paths(
      Vehicle vehicle, String at, String to, Set<String> seen, List<Run> so, List<List<Run>> all) {
    if (at.equals(to)) {
      all.add(so);
      return;
    }
    for (Run run : vehicle.runs()) {
      String next = run.from().equals(at) ? run.to() : run.to().equals(at) ? run.from() : at;
      if (allowed(run) && !next.equals(at) && seen.add(next)) {
        List<Run> longer = new ArrayList<>(so);
        longer.add(run);
        paths(vehicle, next, to, seen, longer, all);
        seen.remove(next);
      }
    }
  }

  /** Neither restraint nor high voltage, and 200 mm from the exhaust, 75 mm from what moves. */
  private static boolean allowed(Run run) {
    return !run.restraint()
        && !run.highVoltage()
        && run.near().stream()
            .allMatch(
                it ->
                    it.distance().mm()
                        >= (it.what() == Hazard.EXHAUST
                            ? 200
                            : it.what() == Hazard.MOVING_PART ? 75 : 0));
  }

  /** 0.8 along a loom, double when hot or moving, 1.3 when wet: the defaults of the rules. */
  private static double weighedMm(Vehicle vehicle, Run run) {
    double hottestC = run.ambient().map(Temperature::celsius).orElse(0.0);
    for (String place : List.of(run.from(), run.to())) {
      hottestC = Math.max(hottestC, vehicle.place(place).orElseThrow().ambient().celsius());
    }
    return run.length().mm()
        * (run.alongLoom() ? 0.8 : 1)
        * (hottestC >= 80 ? 2 : 1)
        * (run.wet() ? 1.3 : 1)
        * (run.moving() ? 2 : 1);
  }

  private static Vehicle draw(Draw draw) {
    List<Place> places = new ArrayList<>();
    for (int i = draw.number(2, 6); i > 0; i--) {
      Temperature ambient = Temperature.of(draw.number(30, 60) + " °C");
      places.add(new Place("p" + i, "place " + i, ambient, false, false, Optional.empty()));
    }
    List<Run> runs = new ArrayList<>();
    List<String> ids = places.stream().map(Place::id).toList();
    for (int i = draw.number(1, 14); i > 0; i--) {
      runs.add(
          new Run(
              "r" + i,
              draw.one(ids),
              draw.one(ids),
              Length.of(draw.number(1, 20) + "00 mm"),
              Length.of(draw.number(0, 9) + "0 mm"),
              "the sill",
              draw.chance(30),
              List.of(),
              List.of(),
              draw.chance(20)
                  ? Optional.of(Temperature.of(draw.number(50, 90) + " °C"))
                  : Optional.empty(),
              draw.chance(20),
              draw.chance(20),
              draw.chance(20)
                  ? List.of(
                      new Nearby(
                          draw.one(List.of(Hazard.EXHAUST, Hazard.MOVING_PART)),
                          Length.of(draw.number(5, 25) + "0 mm")))
                  : List.of(),
              List.of(),
              draw.chance(15),
              draw.chance(10),
              Optional.empty()));
    }
    Vehicle vehicle = new VehicleBuilder().trait("a", "x", "y").build();
    return With.changed(With.changed(vehicle, "places", places), "runs", runs);
  }
}
