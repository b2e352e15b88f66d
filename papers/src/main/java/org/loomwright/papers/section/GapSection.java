package org.loomwright.papers.section;

import java.util.ArrayList;
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
          Column.key("Pin", 18),
          Column.text("State", 10),
          Column.text("Vehicles", 18),
          Column.number("Builds", 7),
          Column.text("Why", 26),
          Column.text("Known from", 21));

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
    List<List<String>> rows = new ArrayList<>();
    for (NeedGap need : pack.plan().gap()) {
      String pin = Figures.capital(pack.names().brief(need.words()));
      for (GapPart part : need.parts()) {
        rows.add(row(pin, part));
        // The pin belongs to all its lines, so it stands where they start.
        pin = "";
      }
    }
    html.table(COLUMNS, rows);
  }

  private static List<String> row(String pin, GapPart part) {
    return List.of(
        pin,
        part.status().words(),
        part.words(),
        Figures.count(part.builds()),
        part.reason(),
        String.join("\n", part.evidence()));
  }
}
