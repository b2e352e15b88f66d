package org.loomwright.papers.section;

import java.util.List;
import java.util.Map;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.FaceLegend;
import org.loomwright.drawing.FaceWords;
import org.loomwright.drawing.PhotoFace;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.FaceUse;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Connector faces from both sides. */
final class FacesSection implements Section {
  private static final double WIDTH_MM = 68;
  private static final double HEIGHT_MM = 56;
  private static final double WIDE_MM = 164;
  private static final double WIDE_HEIGHT_MM = 80;
  private static final double PHOTO_WIDTH_MM = 90;
  private static final double PHOTO_HEIGHT_MM = 68;

  /** Smaller numbers are hard to read at arm's length, mm on paper. */
  private static final double GOOD_NUMBER_MM = 1.7;

  @Override
  public String id() {
    return "faces";
  }

  @Override
  public String title() {
    return "Connector faces";
  }

  @Override
  public void write(Pack pack, Html html) {
    List<FaceUse> uses = FaceUse.of(pack.names());
    if (uses.isEmpty()) {
      html.line("p", "", "No connector with a face on file is touched.");
    }
    for (FaceUse use : uses) {
      face(pack, use, html);
    }
  }

  private static void face(Pack pack, FaceUse use, Html html) {
    Housing housing = use.housing();
    View first = use.fitterView().orElse(new View(Side.WIRE_SIDE, LatchDirection.UP));
    View second =
        new View(first.side() == Side.WIRE_SIDE ? Side.MATING_SIDE : Side.WIRE_SIDE, first.latch());
    Map<String, CavityMark> marks = use.marks();

    html.open("div", "keep")
        .line("h2", "", Figures.capital(use.name()))
        .line(
            "p",
            "",
            Figures.capital(use.place())
                + ". Part "
                + housing.id()
                + ", "
                + housing.name()
                + "."
                + housing.secondaryLock().map(it -> " Lock: " + it + ".").orElse(""));
    pictures(pack, use, first, second, marks, html);
    photo(pack, use, marks, html);
    legend(FaceLegend.of(housing, marks), html);
    html.table(
        List.of(
            Column.key(Figures.capital(use.cavityWord()), 9),
            Column.text("Lead", 16),
            Column.text("In", 13),
            Column.text("Looking at the " + FaceWords.view(housing, first), 31),
            Column.text("Looking at the " + FaceWords.view(housing, second), 31)),
        rows(use, first, second));
    html.close("div");
  }

  /** Side by side where numbers read well, else one below the other and larger. */
  private static void pictures(
      Pack pack, FaceUse use, View first, View second, Map<String, CavityMark> marks, Html html) {
    boolean fitter = use.fitterView().isPresent();
    boolean wide =
        Face.smallestNumberMm(use.housing(), first, WIDTH_MM, HEIGHT_MM) < GOOD_NUMBER_MM;
    double width = wide ? WIDE_MM : WIDTH_MM;
    double height = wide ? WIDE_HEIGHT_MM : HEIGHT_MM;
    html.open("table", "faces").open("tr", "");
    picture(
        Face.svg(use.housing(), first, marks, width, height, pack.lettering()),
        fitter ? "As the fitter sees it" : "From the wire side",
        html);
    if (wide) {
      html.close("tr").open("tr", "");
    }
    picture(
        Face.svg(use.housing(), second, marks, width, height, pack.lettering()),
        fitter ? "From the other side" : "From the mating side",
        html);
    html.close("tr").close("table");
  }

  private static void photo(Pack pack, FaceUse use, Map<String, CavityMark> marks, Html html) {
    use.photo()
        .ifPresent(
            photo ->
                pack.order()
                    .pictures()
                    .find(photo.file())
                    .ifPresent(
                        picture -> {
                          html.open("table", "faces").open("tr", "");
                          picture(
                              PhotoFace.svg(
                                  use.housing(),
                                  photo,
                                  picture,
                                  marks,
                                  PHOTO_WIDTH_MM,
                                  PHOTO_HEIGHT_MM,
                                  pack.lettering()),
                              "Photo, " + photo.side().words() + " (" + photo.file() + ")",
                              html);
                          html.close("tr").close("table");
                        }));
  }

  /** Signs with their words, in two columns. */
  static void legend(List<FaceLegend.Sign> signs, Html html) {
    html.open("table", "legend");
    int rows = (signs.size() + 1) / 2;
    for (int row = 0; row < rows; row++) {
      html.open("tr", "");
      for (int at : new int[] {row, row + rows}) {
        html.open("td", "sign");
        if (at < signs.size()) {
          html.picture(signs.get(at).svg());
        }
        html.close("td").line("td", "", at < signs.size() ? signs.get(at).words() : "");
      }
      html.close("tr");
    }
    html.close("table");
  }

  private static void picture(String svg, String caption, Html html) {
    html.open("td", "").line("p", "cap", caption).picture(svg).close("td");
  }

  private static List<List<String>> rows(FaceUse use, View first, View second) {
    List<List<String>> rows = new java.util.ArrayList<>();
    for (FaceUse.Filled it : use.filled()) {
      rows.add(
          List.of(
              it.cavity(),
              it.what(),
              it.cases().isEmpty() ? "wherever fitted" : Names.cases(it.cases()),
              position(use.housing(), first, it.cavity()),
              position(use.housing(), second, it.cavity())));
    }
    for (String cavity : use.plugged()) {
      rows.add(
          List.of(
              cavity,
              "cavity plug",
              "always",
              position(use.housing(), first, cavity),
              position(use.housing(), second, cavity)));
    }
    return rows;
  }

  private static String position(Housing housing, View view, String cavity) {
    return housing.cavity(cavity).isPresent()
        ? FaceWords.position(housing, view, cavity)
        : "not shown on this face";
  }
}
