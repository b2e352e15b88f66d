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
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.View;
import org.loomwright.papers.words.Figures;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * Makes the page of a connector or fuse block.
 *
 * @param wanted what the address asks for: "side", "latch" and "cavity"; empty when it doesn't
 */
record FaceMaker(Shop shop, Vehicle vehicle, Map<String, String> wanted, FaceThing thing) {
  private static final double WIDTH_MM = 150;
  private static final double HEIGHT_MM = 105;

  /** Half the side of the square that can be touched about a number, mm. */
  private static final double REACH_MM = 2.7;

  FaceView make() {
    View view = view();
    Map<String, String> positions =
        thing.housing().map(it -> FaceWords.positions(it, view)).orElse(Map.of());
    List<FaceView.Row> rows = rows(view, positions);
    Optional<FaceView.Row> sought = rows.stream().filter(FaceView.Row::sought).findFirst();
    Map<String, CavityMark> marks = new LinkedHashMap<>(thing.states());
    sought
        .filter(it -> thing.housing().flatMap(face -> face.cavity(it.number())).isPresent())
        .ifPresent(it -> marks.put(it.number(), CavityMark.SOUGHT));
    VehicleNames names = new VehicleNames(vehicle);
    return new FaceView(
        vehicle,
        thing.id(),
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

  private List<FaceView.Turn> turns(Housing housing, View view) {
    String cavity = asked("cavity");
    List<FaceView.Turn> turns = new ArrayList<>();
    for (Side it : Side.values()) {
      turns.add(
          new FaceView.Turn(
              "side-" + it.ordinal(),
              it.words(),
              href(new View(it, view.latch()), cavity),
              it == view.side()));
    }
    for (LatchDirection it : LatchDirection.values()) {
      turns.add(
          new FaceView.Turn(
              "latch-" + it.ordinal(),
              (housing.latch() ? "latch " : "key ") + Told.words(it),
              href(new View(view.side(), it), cavity),
              it == view.latch()));
    }
    return turns;
  }

  private List<FaceView.Row> rows(View view, Map<String, String> positions) {
    List<FaceView.Row> rows = new ArrayList<>();
    thing
        .lines()
        .forEach(
            (number, lines) -> {
              CavityMark mark = thing.states().get(number);
              rows.add(
                  new FaceView.Row(
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
      Housing housing, View view, Map<String, CavityMark> marks, List<FaceView.Row> rows) {
    Map<String, FaceView.Row> byNumber = new LinkedHashMap<>();
    rows.forEach(it -> byNumber.put(it.number(), it));
    String svg =
        Face.svg(housing, view, marks, WIDTH_MM, HEIGHT_MM, linked(byNumber))
            // Links inside an image would not be told of.
            .replaceFirst("role=\"img\"", "role=\"group\"");
    return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
  }

  /** Numbers of cavities lead to their rows. */
  private Lettering linked(Map<String, FaceView.Row> rows) {
    Lettering plain = Lettering.fitted();
    String word = thing.block() ? "slot " : "cavity ";
    return (x, y, sizeMm, fill, text) -> {
      FaceView.Row row = rows.get(text);
      String written = plain.line(x, y, sizeMm, fill, text);
      if (row == null) {
        return written;
      }
      return "<a href=\""
          + Svg.escape(row.href() + "#" + row.anchor())
          + "\" aria-label=\""
          + Svg.escape(word + text)
          + "\"><rect class=\"hit\" x=\""
          + Svg.number(x - REACH_MM)
          + "\" y=\""
          + Svg.number(y - REACH_MM)
          + "\" width=\""
          + Svg.number(2 * REACH_MM)
          + "\" height=\""
          + Svg.number(2 * REACH_MM)
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
