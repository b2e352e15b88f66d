package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.FaceLegend;
import org.loomwright.drawing.FaceWords;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.PhotoFace;
import org.loomwright.drawing.Svg;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.View;
import org.loomwright.papers.words.FaceStates;
import org.loomwright.papers.words.Figures;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * What the page of a connector or fuse block shows, in one view. Picture and words come from the
 * same view.
 *
 * @param vehicle its vehicle
 * @param name its name
 * @param sort "connector" or "fuse block"
 * @param cavityWord "cavity" or "slot"
 * @param place name of its place
 * @param openings what is opened to get at it
 * @param part housing, in words
 * @param notes what else is to be known of it
 * @param recipe how it is opened, filled and locked
 * @param sections sections of a fuse block
 * @param picture its face; empty when there is none on file
 * @param view the view in words
 * @param fitterView whether it is the view of the fitter
 * @param turns the other views
 * @param rows its cavities
 * @param sought the cavity asked for; empty for none
 * @param signs legend of the picture
 * @param photo photo with the cavities marked; empty when there is none
 */
public record FaceView(
    Vehicle vehicle,
    String name,
    String sort,
    String cavityWord,
    String place,
    String openings,
    String part,
    List<String> notes,
    ServiceRecipe recipe,
    List<Section> sections,
    String picture,
    String view,
    boolean fitterView,
    List<Turn> turns,
    List<Row> rows,
    Optional<Row> sought,
    List<FaceLegend.Sign> signs,
    String photo) {
  private static final double WIDTH_MM = 150;
  private static final double HEIGHT_MM = 105;

  /**
   * Another view of the same face.
   *
   * @param id name in the page
   * @param words what it does
   * @param href its address
   * @param on whether it is the one shown
   */
  public record Turn(String id, String words, String href, boolean on) {}

  /**
   * A cavity or slot.
   *
   * @param number as moulded
   * @param anchor its name in the page
   * @param href the page with it marked
   * @param position where it is in this view; empty without a face
   * @param state what is in it before a kit comes; empty without a face
   * @param lines what is known of it
   * @param sought whether it is the one asked for
   */
  public record Row(
      String number,
      String anchor,
      String href,
      String position,
      String state,
      List<String> lines,
      boolean sought) {
    public Row {
      lines = List.copyOf(lines);
    }
  }

  public FaceView {
    notes = List.copyOf(notes);
    sections = List.copyOf(sections);
    turns = List.copyOf(turns);
    rows = List.copyOf(rows);
    signs = List.copyOf(signs);
  }

  /**
   * A face.
   *
   * @param part part of the address that names it
   * @param wanted what the address asks for: "side", "latch" and "cavity"; empty when it doesn't
   */
  public static Optional<FaceView> of(
      Shop shop, Vehicle vehicle, String part, Map<String, String> wanted) {
    Optional<FaceView> connector =
        vehicle.connectors().stream()
            .filter(it -> Href.part(it.id()).equals(part))
            .findFirst()
            .map(it -> new Maker(shop, vehicle, wanted, Thing.of(vehicle, it, shop)).make());
    return connector.or(
        () ->
            vehicle.fuseBlocks().stream()
                .filter(it -> Href.part(it.id()).equals(part))
                .findFirst()
                .map(it -> new Maker(shop, vehicle, wanted, Thing.of(vehicle, it, shop)).make()));
  }

  /** What connectors and fuse blocks have in common. */
  private record Thing(
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

    static Thing of(Vehicle vehicle, Connector it, Shop shop) {
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
        wires(vehicle, new Spot.OfCavity(it.id(), line.getKey()), line.getValue());
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
      return new Thing(
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

    static Thing of(Vehicle vehicle, FuseBlock it, Shop shop) {
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
        wires(vehicle, new Spot.OfSlot(it.id(), slot.id()), known);
        known.add("Known from: " + Told.evidence(slot.evidence()));
        lines.put(slot.id(), known);
      }
      return new Thing(
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

    private static void wires(Vehicle vehicle, Spot spot, List<String> lines) {
      for (Circuit it : vehicle.circuits()) {
        if (it.from().equals(spot) || it.to().contains(spot)) {
          lines.add(
              Figures.capital(it.name())
                  + ": "
                  + Told.joined(it.wire().text(), it.colour().text())
                  + ", "
                  + Told.onBuilds(it.presentWhen()));
        }
      }
    }
  }

  private record Maker(Shop shop, Vehicle vehicle, Map<String, String> wanted, Thing thing) {

    FaceView make() {
      View view = view();
      Map<String, String> positions =
          thing.housing().map(it -> FaceWords.positions(it, view)).orElse(Map.of());
      List<Row> rows = rows(view, positions);
      Optional<Row> sought = rows.stream().filter(Row::sought).findFirst();
      Map<String, CavityMark> marks = new LinkedHashMap<>(thing.states());
      sought
          .filter(it -> thing.housing().flatMap(face -> face.cavity(it.number())).isPresent())
          .ifPresent(it -> marks.put(it.number(), CavityMark.SOUGHT));
      VehicleNames names = new VehicleNames(vehicle);
      return new FaceView(
          vehicle,
          Figures.capital(thing.name()),
          thing.block() ? "fuse block" : "connector",
          thing.block() ? "slot" : "cavity",
          names.place(thing.place()),
          names.openings(thing.openings()),
          thing.housing().map(it -> "Part " + it.id() + ", " + it.name()).orElse("No face on file"),
          thing.notes(),
          thing.recipe(),
          thing.sections(),
          thing.housing().map(it -> picture(it, view, marks, rows)).orElse(""),
          thing.housing().map(it -> FaceWords.view(it, view)).orElse(""),
          view.equals(thing.view()),
          thing.housing().map(it -> turns(it, view)).orElse(List.of()),
          rows,
          sought,
          thing.housing().map(it -> FaceLegend.of(it, marks)).orElse(List.of()),
          thing.housing().map(it -> photo(it, marks)).orElse(""));
    }

    private View view() {
      Side side =
          Stream.of(Side.values())
              .filter(it -> Told.words(it).equals(asked("side")))
              .findFirst()
              .orElse(thing.view().side());
      LatchDirection latch =
          Stream.of(LatchDirection.values())
              .filter(it -> Told.words(it).equals(asked("latch")))
              .findFirst()
              .orElse(thing.view().latch());
      return new View(side, latch);
    }

    private String asked(String key) {
      return wanted.getOrDefault(key, "");
    }

    private String href(View view, String cavity) {
      return Href.face(vehicle.id(), thing.id())
          + "?side="
          + Href.value(Told.words(view.side()))
          + "&latch="
          + Href.value(Told.words(view.latch()))
          + (cavity.isEmpty() ? "" : "&cavity=" + Href.value(cavity));
    }

    private List<Turn> turns(Housing housing, View view) {
      String cavity = asked("cavity");
      List<Turn> turns = new ArrayList<>();
      for (Side it : Side.values()) {
        turns.add(
            new Turn(
                "side-" + it.ordinal(),
                it.words(),
                href(new View(it, view.latch()), cavity),
                it == view.side()));
      }
      for (LatchDirection it : LatchDirection.values()) {
        turns.add(
            new Turn(
                "latch-" + it.ordinal(),
                (housing.latch() ? "latch " : "key ") + Told.words(it),
                href(new View(view.side(), it), cavity),
                it == view.latch()));
      }
      return turns;
    }

    private List<Row> rows(View view, Map<String, String> positions) {
      List<Row> rows = new ArrayList<>();
      thing
          .lines()
          .forEach(
              (number, lines) -> {
                CavityMark mark = thing.states().get(number);
                rows.add(
                    new Row(
                        number,
                        Href.anchor("cavity", number),
                        href(view, number),
                        Figures.capital(positions.getOrDefault(number, "")),
                        mark == null ? "" : Figures.capital(mark.words()),
                        lines,
                        number.equals(asked("cavity"))));
              });
      return rows;
    }

    private String picture(
        Housing housing, View view, Map<String, CavityMark> marks, List<Row> rows) {
      Map<String, Row> byNumber = new LinkedHashMap<>();
      rows.forEach(it -> byNumber.put(it.number(), it));
      String svg =
          Face.svg(housing, view, marks, WIDTH_MM, HEIGHT_MM, linked(byNumber))
              // Links inside an image would not be told of.
              .replaceFirst("role=\"img\"", "role=\"group\"");
      return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
    }

    /** Numbers of cavities lead to their rows. */
    private Lettering linked(Map<String, Row> rows) {
      Lettering plain = Lettering.fitted();
      String word = thing.block() ? "slot " : "cavity ";
      return (x, y, sizeMm, fill, text) -> {
        Row row = rows.get(text);
        String written = plain.line(x, y, sizeMm, fill, text);
        if (row == null) {
          return written;
        }
        double reach = 2.7;
        return "<a href=\""
            + Svg.escape(row.href() + "#" + row.anchor())
            + "\" aria-label=\""
            + Svg.escape(word + text)
            + "\"><rect class=\"hit\" x=\""
            + Svg.number(x - reach)
            + "\" y=\""
            + Svg.number(y - reach)
            + "\" width=\""
            + Svg.number(2 * reach)
            + "\" height=\""
            + Svg.number(2 * reach)
            + "\" fill=\"#fff\" fill-opacity=\"0\"/>"
            + written
            + "</a>";
      };
    }

    private String photo(Housing housing, Map<String, CavityMark> marks) {
      return thing
          .photo()
          .flatMap(
              it ->
                  shop.picture(it.file())
                      .map(
                          picture ->
                              PhotoFace.svg(
                                  housing, it, picture, marks, 120, 100, Lettering.fitted())))
          .map(it -> it.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\""))
          .orElse("");
    }
  }
}
