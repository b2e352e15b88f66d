package org.loomwright.planner.sizing;

import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.wire.Conductor;

/**
 * What feeds a fault behind a fuse, and what it flows through besides the wire.
 *
 * @param lowestV lowest supply at which a fault must clear, V
 * @param highestV highest supply, V
 * @param strongOhm source and cable up to the fuse at their best, ohm
 * @param weakOhm the same at their worst, ohm
 * @param contactsOhm fuse, contacts, ground point and body on the way, ohm
 */
public record FaultLoop(
    double lowestV, double highestV, double strongOhm, double weakOhm, double contactsOhm) {
  /**
   * The loop behind a fuse.
   *
   * @param section section the fuse hangs on, empty where the vehicle document does not say
   */
  public static FaultLoop of(KitOrder order, Optional<Section> section, Fuse fuse) {
    Vehicle vehicle = order.vehicle();
    return new FaultLoop(
        vehicle.supplyLowest().volts(),
        // 16 V in 12 V systems, 32 V in 24 V systems: ISO 16750-2 (from memory).
        vehicle.supply().volts() < 18 ? 16 : 32,
        // Full warm and old cold starter battery: common practice.
        0.005,
        0.020,
        // Two contacts, a ring on its stud, the body, the fuse at its largest drop: common
        // practice.
        2 * 0.005 + 0.0025 + 0.001 + 0.150 / fuse.ratingA());
  }

  /** The loop with a wire. */
  FaultCurrents.Loop with(Conductor conductor, double feedM, double returnM, double hotC) {
    return new FaultCurrents.Loop(
        lowestV, highestV, strongOhm, weakOhm, conductor, feedM, returnM, contactsOhm, hotC);
  }
}
