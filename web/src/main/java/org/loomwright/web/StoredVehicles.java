package org.loomwright.web;

import io.javalin.http.Context;
import java.util.Optional;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;

/** Vehicles of a store as of one revision, so that a change can be made from just that text. */
final class StoredVehicles {
  /** Kind of a vehicle's document. */
  static final String KIND = "vehicle";

  private StoredVehicles() {}

  /**
   * A vehicle as of a revision.
   *
   * @param revision the revision
   * @param text its text
   * @param vehicle what the text says
   */
  record Found(Revision revision, String text, Vehicle vehicle) {}

  /**
   * The vehicle a page is about.
   *
   * @param ctx request whose path names it as "id"
   * @param number revision wanted; 0 for the newest
   */
  static Optional<Found> find(Store store, Context ctx, long number) {
    String part = ctx.pathParam("id");
    return store.documents().newest().stream()
        .map(Revision::key)
        .filter(it -> it.kind().equals(KIND) && Href.part(it.id()).equals(part))
        .findFirst()
        .flatMap(it -> version(store, it, number))
        .flatMap(StoredVehicles::read);
  }

  private static Optional<Version> version(Store store, DocumentKey key, long number) {
    return number == 0 ? store.documents().newest(key) : store.documents().version(key, number);
  }

  private static Optional<Found> read(Version version) {
    return JsonText.parse(version.content()) instanceof JsonText.Tree tree
            && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Vehicle vehicle
        ? Optional.of(new Found(version.revision(), version.content(), vehicle))
        : Optional.empty();
  }
}
