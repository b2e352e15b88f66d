package org.loomwright.model.workspace;

import java.util.Optional;
import org.loomwright.model.json.Paths;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.RunRules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Hole;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** Checks what is said of how bundles are led, held and laid out. */
final class LayingChecks {
  /** A narrower board has no room for an end with its table. */
  private static final double LEAST_BOARD_MM = 300;

  private final Scope scope;

  private LayingChecks(Scope scope) {
    this.scope = scope;
  }

  /** The vehicle's plan view, what lies on it, and the holes that runs pass through. */
  static void check(Scope scope, Vehicle vehicle) {
    LayingChecks checks = new LayingChecks(scope);
    vehicle.planView().ifPresent(checks::view);
    for (Place place : vehicle.places()) {
      place.at().ifPresent(spot -> checks.spot(place, "at", spot, vehicle));
    }
    for (Run run : vehicle.runs()) {
      for (int i = 0; i < run.bends().size(); i++) {
        checks.spot(run, Paths.item("bends", i), run.bends().get(i), vehicle);
      }
      scope.unique(run.holes(), "name", Hole::name);
      run.holes().forEach(checks::hole);
    }
  }

  /** Limits that nothing could meet. */
  static void check(Scope scope, RunRules rules) {
    LayingChecks checks = new LayingChecks(scope);
    checks.share(rules, "loomFactor", rules.loomFactor());
    checks.share(rules, "conduitFill", rules.conduitFill());
    checks.share(rules, "holeFill", rules.holeFill());
    checks.wholeOrMore(rules, "hotFactor", rules.hotFactor());
    checks.wholeOrMore(rules, "wetFactor", rules.wetFactor());
    checks.wholeOrMore(rules, "movingFactor", rules.movingFactor());
    checks.wholeOrMore(rules, "mostDetour", rules.mostDetour());
    checks.wholeOrMore(rules, "bendFixed", rules.bendFixed());
    checks.wholeOrMore(rules, "bendMoving", rules.bendMoving());
    checks.positive(rules, "clipSpacing", rules.clipSpacing());
    checks.board(rules, "boardWidth", rules.boardWidth());
    checks.board(rules, "boardHeight", rules.boardHeight());
    rules
        .tapeOverlap()
        .filter(it -> it.value().fraction() >= 1)
        .ifPresent(
            it ->
                scope.problem(
                    rules,
                    "tapeOverlap.value",
                    it.value().text(),
                    "\"" + it.value() + "\" can't be right: the tape would never move on"));
  }

  private void view(PlanView view) {
    length(view, "along", view.along());
    length(view, "down", view.down());
  }

  private void spot(Object owner, String key, PlanSpot spot, Vehicle vehicle) {
    if (!scope.sound(spot)) {
      return;
    }
    if (vehicle.planView().isEmpty()) {
      scope.problem(
          owner, key, "", "the vehicle has no \"planView\" on which this point could lie");
      return;
    }
    PlanView view = vehicle.planView().get();
    if (view.along().mm() <= 0 || view.down().mm() <= 0) {
      // Said once of the view, not of every point.
      return;
    }
    within(spot, "along", spot.along(), view.along());
    within(spot, "down", spot.down(), view.down());
  }

  private void within(PlanSpot spot, String key, Length at, Length most) {
    if (at.mm() < 0 || at.mm() > most.mm()) {
      scope.problem(
          spot,
          key,
          at.text(),
          "the point lies outside the plan view, whose '" + key + "' is \"" + most + "\"");
    }
  }

  private void hole(Hole hole) {
    length(hole, "diameter", hole.diameter());
    hole.bore().ifPresent(bore -> length(hole, "bore", bore));
    hole.bore().ifPresent(bore -> scope.ordered(hole, "bore", bore, "diameter", hole.diameter()));
    hole.taken()
        .ifPresent(
            taken -> {
              if (hole.bore().isPresent()) {
                scope.ordered(hole, "taken", taken, "bore", hole.bore().get());
              } else {
                scope.ordered(hole, "taken", taken, "diameter", hole.diameter());
              }
            });
  }

  private void length(Object owner, String key, Length length) {
    if (scope.sound(owner)) {
      scope.aboveZero(owner, key, length.mm(), length.text());
    }
  }

  private void positive(RunRules rules, String key, Optional<Sourced<Length>> length) {
    length.ifPresent(
        it -> scope.aboveZero(rules, key + ".value", it.value().mm(), it.value().text()));
  }

  private void board(RunRules rules, String key, Optional<Sourced<Length>> side) {
    side.filter(it -> it.value().mm() < LEAST_BOARD_MM)
        .ifPresent(
            it ->
                scope.problem(
                    rules,
                    key + ".value",
                    it.value().text(),
                    "a board is at least " + (int) LEAST_BOARD_MM + " mm wide and high"));
  }

  private void share(RunRules rules, String key, Optional<Sourced<Percent>> share) {
    share
        .filter(it -> it.value().fraction() <= 0 || it.value().fraction() > 1)
        .ifPresent(
            it ->
                scope.problem(
                    rules,
                    key + ".value",
                    it.value().text(),
                    "\""
                        + it.value()
                        + "\" can't be right: it must be more than 0 % and at most 100 %"));
  }

  private void wholeOrMore(RunRules rules, String key, Optional<Sourced<Percent>> factor) {
    factor
        .filter(it -> it.value().fraction() < 1)
        .ifPresent(
            it ->
                scope.problem(
                    rules,
                    key + ".value",
                    it.value().text(),
                    "\"" + it.value() + "\" can't be right: it must be at least 100 %"));
  }
}
