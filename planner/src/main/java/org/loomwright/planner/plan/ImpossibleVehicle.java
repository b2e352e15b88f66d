package org.loomwright.planner.plan;

import java.util.stream.Collectors;
import org.loomwright.model.vehicle.Vehicle;

/** The rules of a vehicle exclude every build, so nothing can be planned for it. */
public final class ImpossibleVehicle extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  ImpossibleVehicle(Vehicle vehicle) {
    super(
        "the rules of vehicle '"
            + vehicle.id()
            + "' leave no possible build: "
            + vehicle.rules().stream()
                .map(rule -> rule.exclude().text())
                .collect(Collectors.joining("; "))
            + ". Take out or correct one of them.");
  }
}
