package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.physics.protection.FuseFamily;

/**
 * The slot a feed comes from.
 *
 * @param block fuse block
 * @param slot slot
 */
record FeedSpot(FuseBlock block, Slot slot) {
  /** The slot of a source; empty where it is none, as for a unit or a ground. */
  static Optional<FeedSpot> of(Subject subject, Source source) {
    for (FuseBlock block : subject.vehicle().fuseBlocks()) {
      for (Slot slot : block.slots()) {
        if (new Spot.OfSlot(block.id(), slot.id()).text().equals(source.node())) {
          return Optional.of(new FeedSpot(block, slot));
        }
      }
    }
    return Optional.empty();
  }

  Optional<Section> section() {
    return block.section(slot.section());
  }

  /** Air at the fuse, °C; empty where the vehicle has no such place. */
  Optional<Double> ambientC(Subject subject) {
    return subject.vehicle().place(block.place()).map(it -> it.ambient().celsius());
  }

  /**
   * Family of the fuse behind a feed, by the slot's form for a fuse of the kit, by the circuit's
   * for one of the factory; empty where no form is on file.
   */
  Optional<FuseFamily> family(NetAt at, Source feed) {
    Optional<String> form =
        feed.kitFuse()
            ? Optional.of(slot.form())
            : at.circuits().stream()
                .filter(it -> it.from().text().equals(feed.node()))
                .findFirst()
                .flatMap(Circuit::fuseForm);
    return form.flatMap(
        it ->
            switch (it) {
              case "blade" -> Optional.of(FuseFamily.REGULAR_BLADE);
              case "small blade" -> Optional.of(FuseFamily.SMALL_BLADE);
              case "large blade" -> Optional.of(FuseFamily.LARGE_BLADE);
              case "cartridge" -> Optional.of(FuseFamily.CARTRIDGE);
              case "strip 30" -> Optional.of(FuseFamily.STRIP_30);
              case "strip 51" -> Optional.of(FuseFamily.STRIP_51);
              default -> Optional.empty();
            });
  }
}
