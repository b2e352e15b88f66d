package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** What to buy for each part number, with cost. */
final class PartsSection implements Section {
  /** Parts of a list that is not broken, so that it can be laid beside the bins. */
  private static final int MOST_ON_A_PAGE = 30;

  @Override
  public String id() {
    return "parts";
  }

  @Override
  public String title() {
    return "Parts lists with cost";
  }

  @Override
  public void write(Pack pack, Html html) {
    boolean first = true;
    for (PartNumber number : pack.plan().design().partNumbers()) {
      html.open("div", number.parts().size() <= MOST_ON_A_PAGE ? "keep" : "")
          .line("h2", first ? "first" : "", number.id());
      first = false;
      html.line("p", "", "Sold to: " + number.words());
      html.table(
          List.of(
              Column.key("Part", 20),
              Column.text("Name", 35),
              Column.number("In the kit", 9),
              Column.text("Unit", 6),
              Column.number("To buy", 9),
              Column.number("Price " + number.currency(), 10),
              Column.number("Total " + number.currency(), 11)),
          number.parts().stream().map(PartsSection::row).toList());
      html.open("div", "keep")
          .table(
              "sums",
              List.of(Column.text("For one kit", 79), Column.number(number.currency(), 21)),
              List.of(
                  List.of("Material, with what is bought beyond need", money(number.material())),
                  List.of(
                      "Bench work, " + Figures.minutes(number.benchMinutes()) + " min",
                      money(number.labour())),
                  List.of(
                      "Material and bench work", money(number.material().add(number.labour())))))
          .close("div")
          .close("div");
    }
  }

  private static List<String> row(PartLine it) {
    return List.of(
        it.part(),
        it.name(),
        Figures.quantity(it.quantity()),
        it.unit(),
        Figures.quantity(it.buy()),
        money(it.unitPrice()),
        money(it.total()));
  }

  private static String money(java.math.BigDecimal amount) {
    return Figures.money(amount);
  }
}
