package org.loomwright.web;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Store;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * Whose photo a page is about.
 *
 * @param vehicle id of the vehicle
 * @param vehicleName its name
 * @param vehicleRevision its newest revision
 * @param list key of the list it is in: "connectors" or "fuseBlocks"
 * @param id its id
 * @param name its name
 * @param photo its photo, if it has one of its own
 * @param housing its face
 * @param parts id of the parts list with that
 * @param partsRevision newest revision of that
 */
public record PhotoPlace(
    String vehicle,
    String vehicleName,
    long vehicleRevision,
    String list,
    String id,
    String name,
    Optional<FacePhoto> photo,
    Housing housing,
    String parts,
    long partsRevision) {
  private static final String CONNECTORS = "connectors";
  private static final String BLOCKS = "fuseBlocks";
  private static final String PARTS = "parts";

  /**
   * What has a photo.
   *
   * @param key its document
   * @param list key of the list it is in
   * @param id its id there
   */
  record Owner(DocumentKey key, String list, String id) {}

  /** The connector or fuse block a request is about, if its face is on file. */
  static Optional<PhotoPlace> find(Store store, Shop shop, Context ctx) {
    String part = ctx.pathParam("face");
    return shop.vehicle(ctx.pathParam("id"))
        .flatMap(it -> VehicleText.newest(store, it))
        .flatMap(
            found ->
                Stream.concat(
                        found.vehicle().connectors().stream()
                            .filter(it -> Href.part(it.id()).equals(part))
                            .flatMap(
                                it ->
                                    of(
                                        store,
                                        shop,
                                        found,
                                        CONNECTORS,
                                        it.id(),
                                        it.name(),
                                        it.photo(),
                                        it.housing())
                                        .stream()),
                        found.vehicle().fuseBlocks().stream()
                            .filter(it -> Href.part(it.id()).equals(part))
                            .flatMap(
                                it ->
                                    of(
                                        store,
                                        shop,
                                        found,
                                        BLOCKS,
                                        it.id(),
                                        it.name(),
                                        it.photo(),
                                        it.face().orElse(""))
                                        .stream()))
                    .findFirst());
  }

  private static Optional<PhotoPlace> of(
      Store store,
      Shop shop,
      VehicleText found,
      String list,
      String id,
      String name,
      Optional<FacePhoto> photo,
      String housing) {
    return shop.workspace().parts().stream()
        .filter(it -> it.housing(housing).isPresent())
        .findFirst()
        .flatMap(
            parts ->
                store
                    .documents()
                    .newest(new DocumentKey(PARTS, parts.id()))
                    .map(
                        newest ->
                            new PhotoPlace(
                                found.vehicle().id(),
                                found.vehicle().name(),
                                found.number(),
                                list,
                                id,
                                name,
                                photo,
                                parts.housing(housing).orElseThrow(),
                                parts.id(),
                                newest.revision().number())));
  }

  /** It itself, as it sits in the vehicle. */
  Owner ownOwner() {
    return new Owner(VehicleText.key(vehicle), list, id);
  }

  /** The loose part, which others may have too. */
  Owner partOwner() {
    return new Owner(new DocumentKey(PARTS, parts), "housings", housing.id());
  }

  /** What it is, in words. */
  public String sort() {
    return list.equals(CONNECTORS) ? "connector" : "fuse block";
  }
}
