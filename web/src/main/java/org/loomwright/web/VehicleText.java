package org.loomwright.web;

import java.util.Optional;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Store;
import org.loomwright.store.Version;

/**
 * A revision of a vehicle: its text, and the vehicle in it.
 *
 * @param key of the document
 * @param number of the revision
 * @param text as it is kept
 * @param vehicle what it says
 */
record VehicleText(DocumentKey key, long number, String text, Vehicle vehicle) {

  /** The newest revision; empty when there is none that can be read. */
  static Optional<VehicleText> newest(Store store, Vehicle vehicle) {
    return store.documents().newest(key(vehicle)).flatMap(VehicleText::read);
  }

  /** A revision by its number; empty when there is none that can be read. */
  static Optional<VehicleText> version(Store store, Vehicle vehicle, long number) {
    return store.documents().version(key(vehicle), number).flatMap(VehicleText::read);
  }

  private static DocumentKey key(Vehicle vehicle) {
    return new DocumentKey(DocumentKind.VEHICLE.word(), vehicle.id());
  }

  private static Optional<VehicleText> read(Version version) {
    if (JsonText.parse(version.content()) instanceof JsonText.Tree tree
        && DocumentBinder.bind(tree.node()).document().orElse(null) instanceof Vehicle vehicle) {
      return Optional.of(
          new VehicleText(
              version.revision().key(), version.revision().number(), version.content(), vehicle));
    }
    return Optional.empty();
  }
}
