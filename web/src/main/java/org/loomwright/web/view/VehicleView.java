package org.loomwright.web.view;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.KnownVehicle;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.papers.words.FaceStates;
import org.loomwright.papers.words.Figures;
import org.loomwright.planner.builds.Builds;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * What the page of a vehicle shows.
 *
 * @param vehicle the vehicle
 * @param kits kits made for it
 * @param builds how many builds are possible, in words
 * @param map plan picture for a desk
 * @param narrowMap plan picture for a phone
 * @param faces its connectors and fuse blocks
 * @param compared traits that something hangs on
 * @param differing what is not the same on all builds
 */
public record VehicleView(
    Vehicle vehicle,
    List<Kit> kits,
    String builds,
    String map,
    String narrowMap,
    List<SmallFace> faces,
    List<Trait> compared,
    List<Differing> differing) {
  private static final double WIDE_MM = 230;
  private static final double NARROW_MM = 92;

  /**
   * A connector or fuse block.
   *
   * @param href its page
   * @param name its name
   * @param where its place
   * @param sort what it is
   * @param svg its face; empty when its housing has none on file
   */
  public record SmallFace(String href, String name, String where, String sort, String svg) {}

  /**
   * Something that is not the same on all builds.
   *
   * @param sort what it is, e.g. "circuit"
   * @param name its name
   * @param href where it is shown
   * @param when its condition in words
   * @param cells for each trait the values it can have there; empty when all
   */
  public record Differing(String sort, String name, String href, String when, List<String> cells) {
    public Differing {
      cells = List.copyOf(cells);
    }
  }

  public VehicleView {
    kits = List.copyOf(kits);
    faces = List.copyOf(faces);
    compared = List.copyOf(compared);
    differing = List.copyOf(differing);
  }

  /** The page of a vehicle. */
  public static VehicleView of(Shop shop, Vehicle vehicle, Display units) {
    Builds builds = Builds.of(KnownVehicle.of(vehicle));
    Optional<Picture> picture =
        vehicle.planView().flatMap(PlanView::picture).flatMap(it -> shop.picture(it.file()));
    List<Differences.Fact> facts = Differences.of(vehicle);
    List<Trait> compared =
        vehicle.traits().stream()
            .filter(it -> facts.stream().anyMatch(fact -> fact.narrows(builds, it)))
            .toList();
    return new VehicleView(
        vehicle,
        shop.kitsOn(vehicle),
        Figures.builds(builds.possible().count()),
        map(vehicle, picture, WIDE_MM, units),
        map(vehicle, picture, NARROW_MM, units),
        faces(shop, vehicle),
        compared,
        facts.stream().map(it -> it.row(builds, compared)).toList());
  }

  /** Names of its places and openings. */
  public VehicleNames names() {
    return new VehicleNames(vehicle);
  }

  private static List<SmallFace> faces(Shop shop, Vehicle vehicle) {
    VehicleNames names = new VehicleNames(vehicle);
    List<SmallFace> faces = new ArrayList<>();
    for (FuseBlock it : vehicle.fuseBlocks()) {
      Optional<Housing> housing = it.face().flatMap(shop::housing);
      faces.add(
          new SmallFace(
              Href.face(vehicle.id(), it.id()),
              Figures.capital(it.name()),
              names.place(it.place()),
              "fuse block, " + it.slots().size() + " slots",
              housing
                  .map(
                      face ->
                          Face.svg(
                              face,
                              it.view(),
                              FaceStates.of(vehicle, it, face),
                              70,
                              52,
                              Lettering.fitted()))
                  .orElse("")));
    }
    for (Connector it : vehicle.connectors()) {
      Optional<Housing> housing = shop.housing(it.housing());
      faces.add(
          new SmallFace(
              Href.face(vehicle.id(), it.id()),
              Figures.capital(it.name()),
              names.place(it.place()),
              "connector, part " + it.housing(),
              housing
                  .map(
                      face ->
                          Face.svg(
                              face,
                              it.view(),
                              FaceStates.of(vehicle, it, face),
                              70,
                              52,
                              Lettering.fitted()))
                  .orElse("")));
    }
    return faces;
  }

  /** The places and runs, without a kit in them. */
  private static String map(
      Vehicle vehicle, Optional<Picture> picture, double widthMm, Display units) {
    if (vehicle.places().isEmpty()) {
      return "";
    }
    Kit none =
        new Kit(
            "none",
            vehicle.name(),
            "",
            vehicle.id(),
            "",
            List.of(),
            List.of(),
            List.of(),
            Map.of());
    Plan empty =
        new Plan(
            none,
            new BuildCount(BigInteger.ZERO, 0, 0, 0),
            List.of(),
            new Fit(List.of(), List.of()),
            List.of(),
            List.of(),
            List.of(),
            new Design(List.of(), List.of(), List.of(), List.of(), List.of()),
            Harness.NONE,
            List.of(),
            List.of(),
            List.of(),
            new Guide("", List.of(), List.of(), List.of(), List.of(), 0, 0),
            new Proof(false, BigInteger.ZERO, List.of(), List.of(), List.of()),
            List.of());
    String svg = RunMap.svg(empty, vehicle, picture, widthMm, Lettering.fitted(), units);
    return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
  }

  /** Words of a value with how common it is. */
  public static String value(TraitValue value) {
    return value.id()
        + ": "
        + value.words()
        + value.share().map(it -> " (" + it.text() + ")").orElse("");
  }
}
