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
 * A revision of a vehicle: its text, and the vehicle in it, so that a change can be made from just
 * that text.
 *
 * @param key of the document
 * @param number of the revision
 * @param text as it is kept
 * @param vehicle what it says
 */
record VehicleText(DocumentKey key, long number, String text, Vehicle vehicle) {

  /** The newest revision; empty when there is none that can be read. */
  static Optional<VehicleText> newest(Store store, Vehicle vehicle) {
    return store.documents().newest(key(vehicle.id())).flatMap(VehicleText::read);
  }

  /** A revision by its number; empty when there is none that can be read. */
  static Optional<VehicleText> version(Store store, Vehicle vehicle, long number) {
    return store.documents().version(key(vehicle.id()), number).flatMap(VehicleText::read);
  }

  /** The document of a vehicle. */
  static DocumentKey key(String vehicle) {
    return new DocumentKey(DocumentKind.VEHICLE.word(), vehicle);
  }

  private static Optional<VehicleText> read(Version version) {
    return JsonText.parse(version.content()) instanceof JsonText.Tree tree
            && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Vehicle vehicle
        ? Optional.of(
            new VehicleText(
                version.revision().key(), version.revision().number(), version.content(), vehicle))
        : Optional.empty();
  }
}
