package org.loomwright.planner.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Nearby;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Which runs a bundle may follow, and how their lengths weigh when paths are compared: runs along a
 * factory loom less, hot, wet and moving ones more. Runs along restraint or high-voltage wiring and
 * runs nearer to a hazard than the rules allow are never used, however short.
 */
public final class Laying {
  private final Vehicle vehicle;
  private final Rules rules;

  /** The runs of a vehicle under the rules of a shop. */
  public Laying(Vehicle vehicle, Rules rules) {
    this.vehicle = vehicle;
    this.rules = rules;
  }

  /** The runs that may be used, in the order of the vehicle's document. */
  public List<Run> usable() {
    return vehicle.runs().stream()
        .filter(run -> !run.from().equals(run.to()) && refused(run).isEmpty())
        .toList();
  }

  /** Why a run may not be used; empty when it may. */
  public Optional<String> refused(Run run) {
    if (run.restraint()) {
      return Optional.of("lies along restraint wiring");
    }
    if (run.highVoltage()) {
      return Optional.of("lies along high-voltage wiring");
    }
    for (Nearby near : run.near()) {
      Sourced<Length> clear = RunDefaults.clear(rules, near.what());
      if (near.distance().mm() < clear.value().mm()) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "comes within %s of %s, less than the %s to keep (%s)",
                near.distance().text(),
                near.what().words(),
                clear.value().text(),
                clear.source()));
      }
    }
    return Optional.empty();
  }

  /** A line for each run that may not be used. */
  public List<String> refusals() {
    List<String> lines = new ArrayList<>();
    for (Run run : vehicle.runs()) {
      refused(run)
          .ifPresent(
              why ->
                  lines.add(
                      "run " + run.id() + " along " + run.follows() + " is not used: it " + why));
    }
    return lines;
  }

  /** Length of a run as it counts when paths are compared, mm. */
  public double weighedMm(Run run) {
    double weighedMm = run.length().mm();
    if (run.alongLoom()) {
      weighedMm *= fraction(RunDefaults.loomFactor(rules));
    }
    if (ambientC(run) >= RunDefaults.hotFrom(rules).value().celsius()) {
      weighedMm *= fraction(RunDefaults.hotFactor(rules));
    }
    if (run.wet()) {
      weighedMm *= fraction(RunDefaults.wetFactor(rules));
    }
    if (run.moving()) {
      weighedMm *= fraction(RunDefaults.movingFactor(rules));
    }
    return weighedMm;
  }

  /** Highest ambient along a run, °C: its own, or that of the hotter end. */
  public double ambientC(Run run) {
    double endsC = Math.max(placeC(run.from()), placeC(run.to()));
    return run.ambient().map(it -> Math.max(it.celsius(), endsC)).orElse(endsC);
  }

  private double placeC(String place) {
    return vehicle
        .place(place)
        .map((Place it) -> it.ambient().celsius())
        .orElseThrow(() -> new IllegalStateException("no place " + place));
  }

  private static double fraction(Sourced<Percent> percent) {
    return percent.value().fraction();
  }
}
