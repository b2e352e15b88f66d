package org.loomwright.papers.section;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.design.PartNumber;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** The kits that are made and sold. */
final class NumbersSection implements Section {
  @Override
  public String id() {
    return "numbers";
  }

  @Override
  public String title() {
    return "Part numbers";
  }

  @Override
  public Layout layout() {
    return Layout.FLOW;
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "A part number is a set of leads. It serves a vehicle when it serves every case of that"
            + " vehicle.");
    html.table(
        List.of(
            Column.key("Part number", 17),
            Column.text("Sold to", 31),
            Column.text("Cases", 11),
            Column.text("Leads", 11),
            Column.number("Share", 7),
            Column.number("Bench min", 7),
            Column.number("Material", 8),
            Column.number("Bench work", 8)),
        pack.plan().design().partNumbers().stream().map(NumbersSection::row).toList());
    html.line(
        "p",
        "note",
        "Material and bench work in "
            + pack.plan().design().partNumbers().stream()
                .map(PartNumber::currency)
                .distinct()
                .collect(Collectors.joining(", "))
            + " for one kit.");
  }

  private static List<String> row(PartNumber it) {
    return List.of(
        it.id(),
        it.words(),
        String.join(", ", it.cases()),
        String.join(", ", it.leads()),
        Figures.share(it.share()),
        Figures.minutes(it.benchMinutes()),
        Figures.money(it.material()),
        Figures.money(it.labour()));
  }
}
