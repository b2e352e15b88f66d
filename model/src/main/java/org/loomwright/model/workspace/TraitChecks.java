package org.loomwright.model.workspace;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

/** Checks what a vehicle says about its builds: traits, facts, conditions, rules. */
final class TraitChecks {
  /** Shares are written rounded; this much may be lost. */
  private static final double SHARES_TOLERANCE = 0.005;

  private final Scope scope;
  private final Vehicle vehicle;
  private final VehicleNames names;

  private TraitChecks(Scope scope, Vehicle vehicle, VehicleNames names) {
    this.scope = scope;
    this.vehicle = vehicle;
    this.names = names;
  }

  static void check(Scope scope, Vehicle vehicle, VehicleNames names) {
    new TraitChecks(scope, vehicle, names).checkAll();
  }

  private void checkAll() {
    for (Trait trait : vehicle.traits()) {
      scope.unique(trait.values(), "id", TraitValue::id);
      name(trait);
      shares(trait);
      tell(trait.tell(), trait.values().stream().map(TraitValue::id).toList());
    }
    for (Exclusion rule : vehicle.rules()) {
      known(rule, "exclude", rule.exclude());
    }
    for (Connector connector : vehicle.connectors()) {
      connector.presentWhen().ifPresent(when -> known(connector, "presentWhen", when));
    }
    facts();
    RuleSet.check(scope, vehicle, names);
  }

  // Traits that stand for unknown facts are named after the fact, with slashes between its parts.
  private void name(Trait trait) {
    if (scope.sound(trait) && trait.id().contains("/")) {
      scope.problem(
          trait,
          "id",
          trait.id(),
          "a trait's id has no '/': such names are kept for unknown facts; use '-' instead");
    }
  }

  private void shares(Trait trait) {
    if (!scope.sound(trait)) {
      return;
    }
    List<Percent> shares =
        trait.values().stream().map(TraitValue::share).flatMap(Optional::stream).toList();
    if (shares.isEmpty()) {
      return;
    }
    if (shares.size() < trait.values().size()) {
      scope.problem(
          trait,
          "values",
          "",
          shares.size()
              + " of "
              + trait.values().size()
              + " values have a share; give one to all of them, or to none");
      return;
    }
    double sum = shares.stream().mapToDouble(Percent::fraction).sum();
    if (Math.abs(sum - 1) > SHARES_TOLERANCE) {
      String percent =
          BigDecimal.valueOf(sum * 100)
              .setScale(2, RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString();
      scope.problem(
          trait,
          "values",
          percent + " %",
          "the shares add up to " + percent + " %; they must add up to 100 %");
    }
  }

  private void tell(Tell tell, List<String> values) {
    scope.reference(tell, "place", names.names(), Sort.PLACE, tell.place());
    scope.references(tell, "openings", names.names(), Sort.OPENING, tell.openings());
    if (!scope.sound(tell)) {
      return;
    }
    for (String key : tell.expect().keySet()) {
      if (!values.contains(key)) {
        scope.problem(
            tell,
            "expect",
            key,
            "'" + key + "' is not one of the values" + Nearest.hint(key, "they are", values));
      }
    }
    List<String> missing = values.stream().filter(it -> !tell.expect().containsKey(it)).toList();
    if (!missing.isEmpty()) {
      scope.problem(
          tell,
          "expect",
          "",
          "it does not say what to expect for " + Nearest.list(missing) + "; each value needs it");
    }
    if (!tell.bands().isEmpty()) {
      BandChecks.check(scope, tell, values);
    }
  }

  private void facts() {
    for (Fact fact : Fact.of(vehicle)) {
      if (!fact.when().isUnknown()) {
        condition(fact.owner(), fact.key(), fact.when());
        fact.tell().ifPresent(tell -> tell(tell, List.copyOf(tell.expect().keySet())));
      } else if (fact.tell().isPresent()) {
        tell(fact.tell().get(), List.of("yes", "no"));
      } else if (scope.sound(fact.owner())) {
        scope.problem(
            fact.owner(),
            fact.key(),
            "unknown",
            "the fact is unknown, so 'tell' must say how to find out; add it");
      }
    }
  }

  private void known(Object owner, String key, Condition when) {
    if (when.isUnknown()) {
      scope.problem(
          owner,
          key,
          "unknown",
          "'unknown' can't stand here, as nothing tells how to find out; write a condition on the"
              + " traits");
    } else {
      condition(owner, key, when);
    }
  }

  private void condition(Object owner, String key, Condition when) {
    names.wrong(when).forEach(message -> scope.problem(owner, key, when.text(), message));
  }
}
