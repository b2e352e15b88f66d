package org.loomwright.papers.section;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.quantity.Length;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.BenchEnd;
import org.loomwright.papers.words.CutLine;
import org.loomwright.papers.words.CutList;
import org.loomwright.papers.words.Figures;

/** The cut list. */
final class CutSection implements Section {
  @Override
  public String id() {
    return "cut";
  }

  @Override
  public String title() {
    return "Cut list";
  }

  @Override
  public Layout layout() {
    return Layout.WIDE;
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "In bench order: by wire and colour, longest first. Cut lengths are rounded up to "
            + rule(pack, pack.order().rules().cutRounding().value())
            + " and may be off by "
            + rule(pack, pack.order().rules().cutTolerance().value())
            + ". Print the label near both ends before the terminals go on.");
    html.table(
        List.of(
            Column.key("Label", 11),
            Column.text("Wire", 9.5),
            Column.text("Colour", 6.5),
            Column.number(Figures.head("Cut mm", pack.units()), 5),
            Column.number(Figures.head("Strip A mm", pack.units()), 5),
            Column.text("End A", 23),
            Column.number(Figures.head("Strip B mm", pack.units()), 5),
            Column.text("End B", 23),
            Column.text("In kit", 9),
            Column.text("Done", 3)),
        CutList.of(pack.names()).stream().map(it -> row(pack, it)).toList());
  }

  /** The paper quotes a rule as it stands in the rules. */
  private static String rule(Pack pack, Length rule) {
    return pack.units() == Display.METRIC ? rule.text() : pack.units().show(rule);
  }

  private static List<String> row(Pack pack, CutLine it) {
    return List.of(
        it.lead().label(),
        it.wireName(),
        it.lead().colour().text() + "\n" + it.lead().colour().code(),
        Figures.mm(it.lead().cutMm(), pack.units()),
        strip(pack, it.a()),
        end(pack, it.a()),
        strip(pack, it.b()),
        end(pack, it.b()),
        it.numbers().size() > 1 && it.numbers().size() == pack.plan().design().partNumbers().size()
            ? "all"
            : String.join("\n", it.numbers()),
        "\u2610");
  }

  private static String strip(Pack pack, BenchEnd end) {
    return end.stripMm().map(it -> Figures.fineMm(it, pack.units())).orElse("none");
  }

  private static String end(Pack pack, BenchEnd end) {
    return java.util.stream.Stream.of(
            end.name().equals(end.part()) ? end.part() : end.name() + " (" + end.part() + ")",
            crimp(pack, end),
            end.goesTo().startsWith("spliced") || end.goesTo().startsWith("parked")
                ? ""
                : "to " + end.goesTo())
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  private static String crimp(Pack pack, BenchEnd end) {
    return java.util.stream.Stream.of(
            end.tool().map(it -> it.contains("tool") ? it : "tool " + it).orElse(""),
            end.crimpHeightMm()
                .map(
                    it ->
                        "crimp\u00A0height\u00A0"
                            + Figures.fineMm(it, pack.units())
                            + " "
                            + pack.units().lengthUnit())
                .orElse(""),
            end.seal().map(it -> "seal\u00A0" + it).orElse(""))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
