package org.loomwright.model.workspace;

import java.util.Optional;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.Electrics;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.PowerSource;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Vehicle;

/** Checks electric facts of vehicles and rules for values that contradict each other. */
final class ElectricChecks {
  private final Scope scope;

  private ElectricChecks(Scope scope) {
    this.scope = scope;
  }

  static void check(Scope scope, Vehicle vehicle, PartNames parts) {
    ElectricChecks checks = new ElectricChecks(scope);
    vehicle.source().ifPresent(source -> checks.source(vehicle, source));
    for (FuseBlock block : vehicle.fuseBlocks()) {
      for (Section it : block.sections()) {
        checks.positive(it, "feedResistance", it.feedResistance());
        checks.fuse(it, it.fuse(), it.fuseForm(), parts);
        it.fuse().ifPresent(fuse -> scope.ordered(it, "baseLoad", it.baseLoad(), "fuse", fuse));
      }
    }
    for (GroundStud it : vehicle.grounds()) {
      checks.positive(it, "resistance", it.resistance());
    }
    for (Circuit it : vehicle.circuits()) {
      checks.fuse(it, it.fuse(), it.fuseForm(), parts);
    }
  }

  static void check(Scope scope, Electrics it) {
    ElectricChecks checks = new ElectricChecks(scope);
    checks.ruled(it, "contact", it.contact());
    checks.ruled(it, "splice", it.splice());
    checks.ruled(it, "groundPoint", it.groundPoint());
    checks.ruled(it, "body", it.body());
    checks.ruled(it, "feedCable", it.feedCable());
    checks.ruled(it, "strongSource", it.strongSource());
    checks.ruled(it, "weakSource", it.weakSource());
    it.fuseDrop()
        .map(Sourced::value)
        .ifPresent(drop -> scope.aboveZero(it, "fuseDrop.value", drop.volts(), drop.text()));
    it.supplyHighest()
        .map(Sourced::value)
        .ifPresent(most -> scope.aboveZero(it, "supplyHighest.value", most.volts(), most.text()));
    if (it.strongSource().isPresent() && it.weakSource().isPresent()) {
      scope.ordered(
          it,
          "strongSource",
          it.strongSource().get().value(),
          "weakSource",
          it.weakSource().get().value());
    }
    it.spliceBalance()
        .map(Sourced::value)
        .filter(share -> share.fraction() > 0.5)
        .ifPresent(
            share ->
                scope.problem(
                    it,
                    "spliceBalance.value",
                    share.text(),
                    "\"" + share + "\" can't be right: the thinner side has 50 % at most"));
  }

  private void source(Vehicle vehicle, PowerSource it) {
    positive(it, "strong", it.strong());
    positive(it, "weak", it.weak());
    if (it.strong().isPresent() && it.weak().isPresent()) {
      scope.ordered(it, "strong", it.strong().get(), "weak", it.weak().get());
    }
    it.highest()
        .filter(highest -> scope.sound(vehicle) && highest.compareTo(vehicle.supply()) < 0)
        .ifPresent(
            highest ->
                scope.problem(
                    it,
                    "highest",
                    highest.text(),
                    "\""
                        + highest
                        + "\" is less than 'supply', which is \""
                        + vehicle.supply()
                        + "\"; the highest voltage with the engine running is at least that"));
  }

  private void fuse(
      Object owner, Optional<Current> rating, Optional<String> form, PartNames parts) {
    rating.ifPresent(it -> scope.aboveZero(owner, "fuse", it.amperes(), it.text()));
    if (form.isEmpty() || !scope.sound(owner)) {
      return;
    }
    if (rating.isEmpty()) {
      scope.problem(owner, "fuse", "", "a 'fuseForm' needs the rating of that fuse in 'fuse'");
    }
    // A form that is on no list may be one the shop does not stock, but not a near miss.
    String written = form.get();
    if (!parts.fuseForms().contains(written)) {
      Nearest.to(written, parts.fuseForms())
          .ifPresent(
              near ->
                  scope.problem(
                      owner,
                      "fuseForm",
                      written,
                      "no fuse has the form '" + written + "'; did you mean '" + near + "'?"));
    }
  }

  private void ruled(Electrics owner, String key, Optional<Sourced<Resistance>> value) {
    positive(owner, key + ".value", value.map(Sourced::value));
  }

  private void positive(Object owner, String key, Optional<Resistance> value) {
    value.ifPresent(it -> scope.aboveZero(owner, key, it.ohms(), it.text()));
  }
}
