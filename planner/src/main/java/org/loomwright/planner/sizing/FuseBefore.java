package org.loomwright.planner.sizing;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;

/**
 * A fuse before a wire, with all that its protection depends on besides the wire.
 *
 * @param fuse the fuse
 * @param factory whether it protects a factory circuit; a fault right behind it is then in the
 *     factory's wiring, and no business of the kit
 * @param formOnFile whether its form is on file; a regular blade is taken where it is not
 * @param spot where it sits
 * @param loop what feeds a fault behind it
 * @param notes what is not on file, in words for the trace
 */
public record FuseBefore(
    Fuse fuse,
    boolean factory,
    boolean formOnFile,
    FuseSpot spot,
    FaultLoop loop,
    List<String> notes) {
  /** Copies the notes. */
  public FuseBefore {
    notes = List.copyOf(notes);
  }

  /** A fuse of which only the spot is guessed, in front of nothing that is on file. */
  public static FuseBefore guess(KitOrder order, Fuse fuse, FuseSpot spot) {
    return new FuseBefore(
        fuse, false, true, spot, FaultLoop.of(order, Optional.empty(), fuse), List.of());
  }

  /** A fuse of the kit in a slot, of which the form must be one with a known opening time. */
  public static Optional<FuseBefore> inSlot(
      KitOrder order, FuseBlock block, Slot slot, org.loomwright.model.parts.Fuse part) {
    Optional<Section> section = block.section(slot.section());
    return FuseForms.family(part.form())
        .map(family -> new Fuse(family, part.rating().amperes()))
        .map(
            fuse ->
                new FuseBefore(
                    fuse,
                    false,
                    true,
                    FuseSpot.at(order.vehicle(), block.place()),
                    FaultLoop.of(order, section, fuse),
                    List.of()));
  }

  /**
   * The fuse of a factory circuit, empty where its rating is not on file.
   *
   * @param place where the circuit is joined; the fuse is taken to be as warm where the document
   *     does not say where it sits
   */
  public static Optional<FuseBefore> of(KitOrder order, Circuit circuit, String place) {
    Optional<FuseBlock> block =
        circuit.from() instanceof Spot.OfSlot from
            ? order.vehicle().fuseBlock(from.block())
            : Optional.empty();
    Optional<Section> section =
        circuit.from() instanceof Spot.OfSlot from
            ? block.flatMap(it -> it.slot(from.slot()).flatMap(s -> it.section(s.section())))
            : Optional.empty();
    return circuit
        .fuse()
        .map(it -> new Fuse(FuseFamily.REGULAR_BLADE, it.amperes()))
        .map(
            fuse ->
                new FuseBefore(
                    fuse,
                    true,
                    false,
                    FuseSpot.at(order.vehicle(), block.map(FuseBlock::place).orElse(place)),
                    FaultLoop.of(order, section, fuse),
                    block.isEmpty()
                        ? List.of("where the fuse of " + circuit.name() + " sits is not on file")
                        : List.of()));
  }
}
