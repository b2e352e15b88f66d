package org.loomwright.planner.ways;

import java.util.Comparator;
import java.util.Optional;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.FuseForms;
import org.loomwright.planner.sizing.FuseSpot;
import org.loomwright.planner.sizing.Load;

/**
 * The fuse whose fault current a ground lead may have to return. A short inside the equipment sends
 * the fault of its largest supply through the ground, so the ground must bear what that fuse lets
 * pass (practice: ground conductor of feed size).
 */
public final class FaultFuse {
  private FaultFuse() {}

  /**
   * The fuse of the largest supply on the same plug that returns through this pin, first guess: in
   * the coolest fuse block that has its feed, where the smallest one does.
   */
  public static Optional<FuseBefore> of(NeedAt ground, KitOrder order) {
    Optional<Need> largest =
        ground.plug().pins().stream()
            .map(Pin::need)
            .flatMap(Optional::stream)
            .filter(it -> it.kind() == NeedKind.SUPPLY)
            // A pin that returns no more than it is rated for can't belong to a larger supply.
            .filter(it -> it.continuous().amperes() <= ground.currentA() + 1e-9)
            .max(Comparator.comparingDouble(it -> it.continuous().amperes()));
    double continuousA = largest.map(it -> it.continuous().amperes()).orElse(ground.currentA());
    double mostA =
        largest.flatMap(Need::fuseAtMost).map(it -> it.amperes()).orElse(Double.POSITIVE_INFINITY);
    FuseSpot spot =
        order.vehicle().fuseBlocks().stream()
            .filter(it -> largest.isPresent() && feeds(it, largest.get()))
            .map(it -> FuseSpot.at(order.vehicle(), it.place()))
            .min(Comparator.comparingDouble(FuseSpot::ambientC))
            .orElseGet(() -> FuseSpot.at(order.vehicle(), ground.place()));
    return FuseForms.best(order, "blade", spot, new Load(continuousA, 0, 0), mostA)
        .map(it -> FuseBefore.guess(order, it.rating(), spot));
  }

  private static boolean feeds(FuseBlock block, Need need) {
    return block.sections().stream().anyMatch(it -> need.feed().equals(Optional.of(it.feed())));
  }
}
