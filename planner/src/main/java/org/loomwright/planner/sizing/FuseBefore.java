package org.loomwright.planner.sizing;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Current;
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

  /** A regular blade of which nothing is known but its spot, for first guesses. */
  public static FuseBefore guess(KitOrder order, Current rating, FuseSpot spot) {
    return new FuseBefore(
        new Fuse(FuseFamily.REGULAR_BLADE, rating.amperes()),
        false,
        true,
        spot,
        FaultLoop.of(order, rating),
        List.of());
  }

  /**
   * A fuse of the kit in a slot; empty where no opening time is known for its form.
   *
   * @throws IllegalStateException when the slot's section is not one of the block
   */
  public static Optional<FuseBefore> inSlot(
      KitOrder order, FuseBlock block, Slot slot, org.loomwright.model.parts.Fuse part) {
    Section section =
        block
            .section(slot.section())
            .orElseThrow(() -> new IllegalStateException("no section " + slot.section()));
    return FuseForms.family(part.form())
        .map(
            family ->
                new FuseBefore(
                    new Fuse(family, part.rating().amperes()),
                    false,
                    true,
                    FuseSpot.at(order.vehicle(), block.place()),
                    FaultLoop.of(order, section, part),
                    ofSection(section).isPresent()
                        ? List.of()
                        : List.of(
                            "rating or form of the fuse before "
                                + section.name()
                                + " is not on file: which opens first")));
  }

  /** The fuse before a section; empty where its rating is not on file or its form is not known. */
  public static Optional<Fuse> ofSection(Section section) {
    return section
        .fuseForm()
        .flatMap(FuseForms::family)
        .flatMap(family -> section.fuse().map(it -> new Fuse(family, it.amperes())));
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
    Optional<FuseFamily> family = circuit.fuseForm().flatMap(FuseForms::family);
    return circuit
        .fuse()
        .map(
            rating ->
                new FuseBefore(
                    new Fuse(family.orElse(FuseFamily.REGULAR_BLADE), rating.amperes()),
                    true,
                    family.isPresent(),
                    FuseSpot.at(order.vehicle(), block.map(FuseBlock::place).orElse(place)),
                    FaultLoop.of(order, section, circuit, rating),
                    block.isEmpty()
                        ? List.of("where the fuse of " + circuit.name() + " sits is not on file")
                        : List.of()));
  }
}
