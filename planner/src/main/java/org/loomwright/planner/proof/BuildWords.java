package org.loomwright.planner.proof;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

/** Builds in the owner's words, traits in the order of the vehicle. */
final class BuildWords {
  private final Vehicle vehicle;

  BuildWords(Vehicle vehicle) {
    this.vehicle = vehicle;
  }

  /** Trait id to value id. */
  Map<String, String> values(Fewest.Cube cube) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Trait trait : vehicle.traits()) {
      Integer value = cube.values().get(trait.id());
      if (value != null) {
        values.put(trait.id(), trait.values().get(value).id());
      }
    }
    return values;
  }

  /** The values as clauses joined by "and". */
  String of(Fewest.Cube cube) {
    Map<String, String> values = values(cube);
    List<String> clauses =
        vehicle.traits().stream()
            .flatMap(
                trait ->
                    trait.values().stream()
                        .filter(value -> value.id().equals(values.get(trait.id())))
                        .map(TraitValue::words))
            .toList();
    return clauses.isEmpty() ? "every possible build" : String.join(" and ", clauses);
  }
}
