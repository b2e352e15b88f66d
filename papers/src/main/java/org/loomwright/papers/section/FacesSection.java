package org.loomwright.papers.section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.FaceWords;
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
    Map<String, CavityMark> marks = marks(use);

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
    html.open("table", "faces").open("tr", "");
    picture(
        pack,
        housing,
        first,
        marks,
        use.fitterView().isPresent() ? "As the fitter sees it" : "From the wire side",
        html);
    picture(
        pack,
        housing,
        second,
        marks,
        use.fitterView().isPresent() ? "From the other side" : "From the mating side",
        html);
    html.close("tr").close("table");
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

  private static Map<String, CavityMark> marks(FaceUse use) {
    Map<String, CavityMark> marks = new LinkedHashMap<>();
    for (String cavity : use.plugged()) {
      if (use.housing().cavity(cavity).isPresent()) {
        marks.put(cavity, CavityMark.PLUGGED);
      }
    }
    for (FaceUse.Filled it : use.filled()) {
      if (use.housing().cavity(it.cavity()).isPresent()) {
        marks.put(it.cavity(), CavityMark.FILLED);
      }
    }
    return marks;
  }

  private static void picture(
      Pack pack,
      Housing housing,
      View view,
      Map<String, CavityMark> marks,
      String caption,
      Html html) {
    html.open("td", "")
        .line("p", "cap", caption)
        .picture(Face.svg(housing, view, marks, WIDTH_MM, HEIGHT_MM, pack.lettering()))
        .close("td");
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
