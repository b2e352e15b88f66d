package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.CavityMark;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.View;
import org.loomwright.papers.words.FaceStates;
import org.loomwright.papers.words.Figures;
import org.loomwright.web.shop.Shop;

/**
 * What connectors and fuse blocks have in common.
 *
 * @param states what is in the cavities before a kit comes; empty without a face
 * @param lines what is known of each cavity or slot, in the order of the documents
 */
record FaceThing(
    String id,
    String name,
    boolean block,
    String place,
    List<String> openings,
    View view,
    Optional<Housing> housing,
    Map<String, CavityMark> states,
    ServiceRecipe recipe,
    List<Section> sections,
    Optional<FacePhoto> photo,
    List<String> notes,
    Map<String, List<String>> lines) {

  static FaceThing of(Vehicle vehicle, Connector it, Shop shop, Display units) {
    Optional<Housing> housing = shop.housing(it.housing());
    List<String> notes = new ArrayList<>();
    it.presentWhen().filter(Told::differs).ifPresent(w -> notes.add("There " + Told.onBuilds(w)));
    if (it.restraint()) {
      notes.add("Belongs to a restraint system: never probe it");
    }
    if (it.highVoltage()) {
      notes.add("High voltage: for trained people only");
    }
    it.matePlating().ifPresent(plating -> notes.add("Contacts plated with " + plating));
    notes.add("Known from: " + Told.evidence(it.evidence()));
    Map<String, List<String>> lines = new LinkedHashMap<>();
    housing.ifPresent(
        face -> face.cavities().forEach(c -> lines.put(c.number(), new ArrayList<>())));
    for (Map.Entry<String, List<String>> line : lines.entrySet()) {
      wires(vehicle, new Spot.OfCavity(it.id(), line.getKey()), line.getValue(), units);
      it.cavity(line.getKey())
          .ifPresent(
              fact -> {
                fact.pluggedWhen()
                    .ifPresent(w -> line.getValue().add("Seal plug " + Told.onBuilds(w)));
                fact.blockedWhen()
                    .ifPresent(w -> line.getValue().add("Blocked " + Told.onBuilds(w)));
                line.getValue().add("Known from: " + Told.evidence(fact.evidence()));
              });
    }
    return new FaceThing(
        it.id(),
        it.name(),
        false,
        it.place(),
        it.openings(),
        it.view(),
        housing,
        housing.map(face -> FaceStates.of(vehicle, it, face)).orElse(Map.of()),
        it.recipe(),
        List.of(),
        it.photo().or(() -> housing.flatMap(Housing::photo)),
        notes,
        lines);
  }

  static FaceThing of(Vehicle vehicle, FuseBlock it, Shop shop, Display units) {
    Optional<Housing> housing = it.face().flatMap(shop::housing);
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (Slot slot : it.slots()) {
      List<String> known = new ArrayList<>();
      known.add(
          Figures.capital(
              Told.joined(
                  it.sections().stream()
                      .filter(section -> section.id().equals(slot.section()))
                      .map(Section::name)
                      .findFirst()
                      .orElse(slot.section()),
                  slot.form() + " fuse",
                  "at most " + slot.maxRating().text(),
                  "metal fitted " + Told.onBuilds(slot.metalWhen()))));
      known.add("Fed: " + slot.fedBlade() + ". To the load: " + slot.loadBlade() + ".");
      wires(vehicle, new Spot.OfSlot(it.id(), slot.id()), known, units);
      known.add("Known from: " + Told.evidence(slot.evidence()));
      lines.put(slot.id(), known);
    }
    return new FaceThing(
        it.id(),
        it.name(),
        true,
        it.place(),
        it.openings(),
        it.view(),
        housing,
        housing.map(face -> FaceStates.of(vehicle, it, face)).orElse(Map.of()),
        it.recipe(),
        it.sections(),
        it.photo().or(() -> housing.flatMap(Housing::photo)),
        List.of(),
        lines);
  }

  private static void wires(Vehicle vehicle, Spot spot, List<String> lines, Display units) {
    for (Circuit it : vehicle.circuits()) {
      if (it.from().equals(spot) || it.to().contains(spot)) {
        lines.add(
            Figures.capital(it.name())
                + ": "
                + Told.joined(units.show(it.wire()), it.colour().text())
                + ", "
                + Told.onBuilds(it.presentWhen()));
      }
    }
  }
}
