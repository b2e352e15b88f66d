package org.loomwright.model.workspace;

import org.loomwright.model.json.Nearest;
import org.loomwright.model.json.Paths;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;

/** Checks what a vehicle's parts say about each other and about the parts lists. */
final class VehicleChecks {
  private final Scope scope;
  private final Vehicle vehicle;
  private final VehicleNames names;
  private final PartNames parts;
  private final Pictures pictures;

  private VehicleChecks(
      Scope scope, Vehicle vehicle, VehicleNames names, PartNames parts, Pictures pictures) {
    this.scope = scope;
    this.vehicle = vehicle;
    this.names = names;
    this.parts = parts;
    this.pictures = pictures;
  }

  static void check(
      Scope scope, Vehicle vehicle, VehicleNames names, PartNames parts, Pictures pictures) {
    new VehicleChecks(scope, vehicle, names, parts, pictures).checkAll();
  }

  private void checkAll() {
    scope.unique(vehicle.traits(), "id", Trait::id);
    scope.unique(vehicle.openings(), "id", Opening::id);
    scope.unique(vehicle.places(), "id", Place::id);
    scope.unique(vehicle.runs(), "id", Run::id);
    scope.unique(vehicle.connectors(), "id", Connector::id);
    scope.unique(vehicle.fuseBlocks(), "id", FuseBlock::id);
    scope.unique(vehicle.grounds(), "id", GroundStud::id);
    scope.unique(vehicle.circuits(), "id", Circuit::id);
    scope.aboveZero(vehicle, "supply", vehicle.supply().volts(), vehicle.supply().text());
    scope.aboveZero(
        vehicle, "supplyLowest", vehicle.supplyLowest().volts(), vehicle.supplyLowest().text());
    scope.reference(vehicle, "battery", names.names(), Sort.PLACE, vehicle.battery());
    scope.references(
        vehicle, "batteryOpenings", names.names(), Sort.OPENING, vehicle.batteryOpenings());
    for (Opening opening : vehicle.openings()) {
      scope.reference(opening, "place", names.names(), Sort.PLACE, opening.place());
      scope.references(opening, "behind", names.names(), Sort.OPENING, opening.behind());
    }
    TraitChecks.check(scope, vehicle, names);
    RunChecks.check(scope, vehicle, names);
    LayingChecks.check(scope, vehicle);
    vehicle.connectors().forEach(this::connector);
    vehicle.fuseBlocks().forEach(this::block);
    for (GroundStud ground : vehicle.grounds()) {
      scope.reference(ground, "place", names.names(), Sort.PLACE, ground.place());
      scope.references(ground, "openings", names.names(), Sort.OPENING, ground.openings());
    }
    vehicle.circuits().forEach(this::circuit);
    ElectricChecks.check(scope, vehicle, parts);
  }

  private void connector(Connector it) {
    scope.reference(it, "housing", parts.names(), Sort.HOUSING, it.housing());
    scope.reference(it, "place", names.names(), Sort.PLACE, it.place());
    scope.references(it, "openings", names.names(), Sort.OPENING, it.openings());
    scope.unique(it.cavities(), "cavity", CavityFact::cavity);
    for (CavityFact fact : it.cavities()) {
      parts
          .wrongCavity(it.housing(), fact.cavity())
          .ifPresent(message -> scope.problem(fact, "cavity", fact.cavity(), message));
    }
    it.photo().ifPresent(photo -> PhotoChecks.check(scope, photo, it.housing(), parts, pictures));
  }

  private void block(FuseBlock it) {
    scope.reference(it, "place", names.names(), Sort.PLACE, it.place());
    scope.references(it, "openings", names.names(), Sort.OPENING, it.openings());
    it.face().ifPresent(face -> scope.reference(it, "face", parts.names(), Sort.HOUSING, face));
    it.photo().ifPresent(photo -> photo(it, photo));
    scope.unique(it.sections(), "id", Section::id);
    scope.unique(it.slots(), "id", Slot::id);
    for (Section section : it.sections()) {
      scope.aboveZero(section, "limit", section.limit().amperes(), section.limit().text());
    }
    for (Slot slot : it.slots()) {
      names
          .inBlock(it.id())
          .ifPresent(
              inside -> scope.reference(slot, "section", inside, Sort.SECTION, slot.section()));
      scope.reference(slot, "terminal", parts.names(), Sort.TERMINAL, slot.terminal());
      scope.aboveZero(slot, "maxRating", slot.maxRating().amperes(), slot.maxRating().text());
      it.face()
          .flatMap(face -> parts.wrongEnd(face, slot.id()))
          .ifPresent(message -> scope.problem(slot, "id", slot.id(), message));
      fuseForm(slot);
    }
  }

  private void photo(FuseBlock it, FacePhoto photo) {
    if (it.face().isPresent()) {
      PhotoChecks.check(scope, photo, it.face().get(), parts, pictures);
    } else {
      scope.problem(
          photo,
          "",
          photo.file(),
          "a photo needs a face to be laid on; give the block a 'face', or leave the photo out");
    }
  }

  /** A form that is not on the lists may be one the shop does not stock, but not a near miss. */
  private void fuseForm(Slot slot) {
    if (!parts.fuseForms().contains(slot.form())) {
      Nearest.to(slot.form(), parts.fuseForms())
          .ifPresent(
              near ->
                  scope.problem(
                      slot,
                      "form",
                      slot.form(),
                      "no fuse has the form '" + slot.form() + "'; did you mean '" + near + "'?"));
    }
  }

  private void circuit(Circuit it) {
    spot(it, "from", it.from());
    for (int i = 0; i < it.to().size(); i++) {
      spot(it, Paths.item("to", i), it.to().get(i));
    }
    scope.references(it, "reachedAt", names.names(), Sort.PLACE, it.reachedAt());
    if (!scope.sound(it)) {
      return;
    }
    boolean ground = it.kind() == CircuitKind.GROUND;
    boolean supply = it.kind() == CircuitKind.SUPPLY;
    boolean spliced = !it.reachedAt().isEmpty() && !it.restraint();
    if (!ground && it.feed().isEmpty()) {
      scope.problem(
          it,
          "feed",
          "",
          "a supply or signal needs 'feed': a supply kind by DIN 72552 such as \"30\", or the name"
              + " of the signal");
    }
    if (supply && spliced && it.fuse().isEmpty()) {
      scope.problem(
          it, "fuse", "", "a supply that can be spliced into needs the rating of its fuse");
    }
    if ((supply || ground) && spliced && it.load().isEmpty()) {
      scope.problem(
          it,
          "load",
          "",
          "a circuit that can be spliced into needs the load that is on it already");
    }
    it.length().ifPresent(length -> scope.aboveZero(it, "length", length.mm(), length.text()));
  }

  private void spot(Circuit it, String key, Spot spot) {
    if (spot instanceof Spot.OfCavity at) {
      scope.reference(it, key, names.names(), Sort.CONNECTOR, at.connector());
      names
          .housing(at.connector())
          .flatMap(housing -> parts.wrongEnd(housing, at.cavity()))
          .ifPresent(message -> scope.problem(it, key, spot.text(), message));
    } else if (spot instanceof Spot.OfSlot at) {
      scope.reference(it, key, names.names(), Sort.BLOCK, at.block());
      names
          .inBlock(at.block())
          .ifPresent(inside -> scope.reference(it, key, inside, Sort.SLOT, at.slot()));
    } else if (spot instanceof Spot.OfGround at) {
      scope.reference(it, key, names.names(), Sort.GROUND, at.ground());
    } else if (spot instanceof Spot.Loose at) {
      scope.reference(it, key, names.names(), Sort.PLACE, at.place());
    }
  }
}
