package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

/** Checks what a person said beside the table. */
final class WholeTable {
  private WholeTable() {}

  static List<String> problems(Vehicle vehicle, Assumptions assumptions, FarEnd ends) {
    List<String> problems = new ArrayList<>();
    values(assumptions.presentWhen().expr(), vehicle, problems);
    assumptions
        .farEnd()
        .filter(it -> !(it instanceof Spot.OfUnit))
        .filter(it -> ends.find(it.text()).flatMap(Fact::known).isEmpty())
        .ifPresent(
            it ->
                problems.add(
                    "the other end of the wires, '"
                        + it.text()
                        + "', is not on file; write e.g. 'unit body-computer' or 'slot BLOCK SLOT'"));
    return problems;
  }

  private static void values(Expr expr, Vehicle vehicle, List<String> problems) {
    if (expr instanceof Expr.Is is) {
      value(is.trait(), is.value(), vehicle, problems);
    } else if (expr instanceof Expr.In in) {
      in.values().forEach(value -> value(in.trait(), value, vehicle, problems));
    }
    expr.parts().forEach(part -> values(part, vehicle, problems));
  }

  private static void value(String trait, String value, Vehicle vehicle, List<String> problems) {
    Optional<Trait> found =
        vehicle.traits().stream().filter(it -> it.id().equals(trait)).findFirst();
    if (found.isEmpty()) {
      problems.add(
          "there is no trait '"
              + trait
              + "'"
              + Nearest.hint(
                  trait, "the traits are", vehicle.traits().stream().map(Trait::id).toList()));
      return;
    }
    List<String> values = found.get().values().stream().map(TraitValue::id).toList();
    if (!values.contains(value)) {
      problems.add(
          "trait '"
              + trait
              + "' has no value '"
              + value
              + "'"
              + Nearest.hint(value, "its values are", values));
    }
  }
}
