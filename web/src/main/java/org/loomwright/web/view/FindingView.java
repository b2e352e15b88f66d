package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * What the pages show of a finding.
 *
 * @param finding the finding
 * @param vehicle name of its vehicle
 * @param vehicleRevision what the vehicle's document calls its revision; empty when it is gone
 * @param at what it concerns, in words; empty when it does not say
 * @param atHref where that is shown; empty when it is not there any more
 * @param traits traits as seen, in words
 * @param photos its photos
 */
public record FindingView(
    Finding finding,
    String vehicle,
    String vehicleRevision,
    String at,
    String atHref,
    List<String> traits,
    List<Photo> photos) {
  /**
   * A photo.
   *
   * @param file name of its file
   * @param shows what it shows
   * @param source the picture as an address; empty when there is none of this name
   */
  public record Photo(String file, String shows, String source) {}

  /** What is shown of what a finding concerns. */
  private record Thing(String words, String href) {}

  public FindingView {
    traits = List.copyOf(traits);
    photos = List.copyOf(photos);
  }

  /** All findings, open ones first, then the newest first. */
  public static List<FindingView> all(Shop shop) {
    return shop.workspace().findings().stream()
        .sorted(
            Comparator.comparing((Finding it) -> !it.isOpen())
                .thenComparing(Finding::when, Comparator.reverseOrder())
                .thenComparing(Finding::id))
        .map(it -> of(shop, it))
        .toList();
  }

  /** One finding. */
  public static FindingView of(Shop shop, Finding finding) {
    Optional<Vehicle> vehicle =
        shop.workspace().vehicles().stream()
            .filter(it -> it.id().equals(finding.vehicle()))
            .findFirst();
    Optional<Thing> thing =
        finding
            .at()
            .map(
                at ->
                    vehicle.flatMap(it -> thing(it, at)).orElseGet(() -> new Thing(at.text(), "")));
    List<String> traits = new ArrayList<>();
    for (Map.Entry<String, String> it : finding.traits().entrySet()) {
      traits.add(vehicle.map(on -> trait(on, it)).orElseGet(() -> plain(it)));
    }
    return new FindingView(
        finding,
        vehicle.map(Vehicle::name).orElse(finding.vehicle()),
        vehicle.map(Vehicle::revision).orElse(""),
        thing.map(Thing::words).orElse(""),
        thing.map(Thing::href).orElse(""),
        traits,
        finding.photos().stream()
            .map(
                it ->
                    new Photo(
                        it.file(),
                        it.shows().orElse(""),
                        shop.picture(it.file()).map(Picture::dataUri).orElse("")))
            .toList());
  }

  private static String plain(Map.Entry<String, String> seen) {
    return seen.getKey() + ": " + seen.getValue();
  }

  private static String trait(Vehicle vehicle, Map.Entry<String, String> seen) {
    return vehicle.traits().stream()
        .filter(it -> it.id().equals(seen.getKey()))
        .findFirst()
        .map(it -> it.name() + ": " + seen.getValue())
        .orElseGet(() -> plain(seen));
  }

  private static Optional<Thing> thing(Vehicle vehicle, FoundAt at) {
    String page = Href.vehicle(vehicle.id());
    return switch (at.sort()) {
      case CONNECTOR, CAVITY ->
          vehicle.connector(at.id()).map(it -> face(vehicle, it.name(), "cavity ", at));
      case BLOCK, SLOT ->
          vehicle.fuseBlock(at.id()).map(it -> face(vehicle, it.name(), "slot ", at));
      case GROUND ->
          vehicle.grounds().stream()
              .filter(it -> it.id().equals(at.id()))
              .findFirst()
              .map(it -> new Thing(it.name(), page + "#" + Href.anchor("ground", it.id())));
      case CIRCUIT ->
          vehicle.circuits().stream()
              .filter(it -> it.id().equals(at.id()))
              .findFirst()
              .map(it -> new Thing(it.name(), page + "#" + Href.anchor("circuit", it.id())));
      case PLACE -> vehicle.place(at.id()).map(it -> new Thing(it.name(), page + "#places"));
      case RUN ->
          vehicle.runs().stream()
              .filter(it -> it.id().equals(at.id()))
              .findFirst()
              .map(
                  it -> {
                    VehicleNames names = new VehicleNames(vehicle);
                    return new Thing(
                        "run from " + names.place(it.from()) + " to " + names.place(it.to()),
                        page + "#runs");
                  });
    };
  }

  private static Thing face(Vehicle vehicle, String name, String word, FoundAt at) {
    String page = Href.face(vehicle.id(), at.id());
    return at.part()
        .map(
            it ->
                new Thing(
                    word + it + " of " + name,
                    page + "?cavity=" + Href.value(it) + "#" + Href.anchor("cavity", it)))
        .orElseGet(() -> new Thing(name, page));
  }

  /** Class of its state. */
  public String css() {
    return switch (finding.state()) {
      case OPEN -> "open-state";
      case ACCEPTED, SET_ASIDE -> "closed-state";
    };
  }

  /** Whether it is on a connector or fuse block. */
  public boolean isOn(String face) {
    return finding.at().filter(it -> it.isOn(face)).isPresent();
  }
}
