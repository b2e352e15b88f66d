package org.loomwright.planner.need;

import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** How far the fuse of a factory circuit may be loaded once something is added to it. */
public final class HostLimit {
  private HostLimit() {}

  /**
   * Share of the fuse rating: the engine-bay limit when the fuse sits in an engine bay, otherwise
   * the cabin limit.
   */
  public static double of(Circuit circuit, Vehicle vehicle, Rules rules) {
    boolean hot =
        circuit.from() instanceof Spot.OfSlot slot
            && vehicle
                .fuseBlock(slot.block())
                .map(FuseBlock::place)
                .flatMap(vehicle::place)
                .map(Place::engineBay)
                .orElse(false);
    return hot
        ? rules.hostLoadingEngineBay().value().fraction()
        : rules.hostLoadingCabin().value().fraction();
  }
}
