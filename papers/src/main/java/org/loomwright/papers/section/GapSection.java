package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.NeedGap;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** What vehicles have of each need and what they lack. */
final class GapSection implements Section {
  private static final List<Column> COLUMNS =
      List.of(
          Column.key("State", 13),
          Column.text("Vehicles", 25),
          Column.number("Builds", 10),
          Column.text("Why", 34),
          Column.text("Known from", 18));

  @Override
  public String id() {
    return "gap";
  }

  @Override
  public String title() {
    return "What is there and what is missing";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "For each pin of the equipment: what possible builds already have. The lines of one pin"
            + " cover every build once.");
    for (NeedGap need : pack.plan().gap()) {
      html.open("div", need.parts().size() <= 6 ? "keep" : "")
          .line("h3", "", Figures.capital(need.words()) + " (" + need.need() + ")")
          .table(COLUMNS, need.parts().stream().map(GapSection::row).toList())
          .close("div");
    }
  }

  private static List<String> row(GapPart part) {
    return List.of(
        part.status().words(),
        part.words(),
        Figures.count(part.builds()),
        part.reason(),
        String.join("\n", part.evidence()));
  }
}
