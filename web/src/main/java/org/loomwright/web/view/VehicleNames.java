package org.loomwright.web.view;

import java.util.List;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Names of a vehicle's places and openings.
 *
 * @param vehicle the vehicle
 */
public record VehicleNames(Vehicle vehicle) {
  /** Name of a place. */
  public String place(String id) {
    return vehicle.places().stream()
        .filter(it -> it.id().equals(id))
        .map(it -> it.name())
        .findFirst()
        .orElse(id);
  }

  /** Names of openings. */
  public String openings(List<String> ids) {
    List<String> names = ids.stream().map(this::opening).toList();
    return names.isEmpty() ? "nothing to open" : String.join(", ", names);
  }

  private String opening(String id) {
    return vehicle.openings().stream()
        .filter(it -> it.id().equals(id))
        .map(it -> it.name())
        .findFirst()
        .orElse(id);
  }
}
