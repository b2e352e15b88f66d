package org.loomwright.planner.sizing;

import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.physics.protection.FusePlace;

/**
 * Where a fuse sits: warm, it carries less and opens earlier.
 *
 * @param place cabin or engine bay, as published loading limits tell them apart
 * @param ambientC highest temperature of the air there, °C
 */
public record FuseSpot(FusePlace place, double ambientC) {
  /**
   * The spot at a place of a vehicle.
   *
   * @throws IllegalStateException when the vehicle has no such place
   */
  public static FuseSpot at(Vehicle vehicle, String placeId) {
    Place place =
        vehicle.place(placeId).orElseThrow(() -> new IllegalStateException("no place " + placeId));
    return new FuseSpot(
        place.engineBay() ? FusePlace.ENGINE_BAY : FusePlace.CABIN, place.ambient().celsius());
  }
}
