package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Lead;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Leads, joints, housings and fuses. */
final class LeadsSection implements Section {
  @Override
  public String id() {
    return "leads";
  }

  @Override
  public String title() {
    return "Leads";
  }

  @Override
  public Layout layout() {
    return Layout.WIDE;
  }

  @Override
  public void write(Pack pack, Html html) {
    Design design = pack.plan().design();
    html.table(
        List.of(
            Column.key("Label", 11),
            Column.text("From (end A)", 16),
            Column.text("To (end B)", 16),
            Column.text("Wire", 9),
            Column.text("Colour", 6.5),
            pack.units() == Display.METRIC
                ? Column.number("Area mm²", 4.5)
                : Column.text(Figures.head("Area mm²", pack.units()), 4.5),
            Column.number(Figures.head("Length mm", pack.units()), 5.5),
            Column.number("Load A", 4),
            Column.number("Fuse A", 5.5),
            Column.text("Otherwise than made", 22)),
        design.leads().stream().map(it -> lead(pack, it)).toList());
    html.line(
        "p",
        "note",
        "Length is the finished length with slack; the path may be off by the tolerance given with"
            + " the runs below.");
    runs(pack, html);
    joints(pack, html);
    housings(pack, html);
    fuses(pack, html);
  }

  private static List<String> lead(Pack pack, Lead it) {
    Names names = pack.names();
    return List.of(
        it.label().contains(it.what()) ? it.label() : it.label() + "\n" + it.what(),
        names.end(it.a()),
        names.end(it.b()),
        names.part(it.wire()),
        it.colour().text() + "\n" + it.colour().code(),
        Figures.area(it.areaMm2(), pack.units()),
        Figures.mm(it.lengthMm(), pack.units()),
        Figures.amps(it.currentA()),
        it.own().isPresent() ? "own lead" : it.fuseA() == 0 ? "ground" : Figures.amps(it.fuseA()),
        Stream.of(names.otherwise("A", it.a()), names.otherwise("B", it.b()))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining("\n")));
  }

  /** Leads that lie side by side all the way share a line. */
  private static void runs(Pack pack, Html html) {
    Map<List<String>, List<String>> together = new LinkedHashMap<>();
    for (Lead it : pack.plan().design().leads()) {
      together
          .computeIfAbsent(
              List.of(
                  it.runs().stream().map(run -> run(pack, run)).collect(Collectors.joining("; ")),
                  Figures.mm(it.pathMm(), pack.units()),
                  Figures.mm(it.toleranceWorstMm(), pack.units()),
                  Figures.mm(it.toleranceRssMm(), pack.units())),
              way -> new ArrayList<>())
          .add(it.id());
    }
    List<List<String>> rows = new ArrayList<>();
    together.forEach(
        (way, leads) -> {
          List<String> row = new ArrayList<>(List.of(String.join(", ", leads)));
          row.addAll(way);
          rows.add(row);
        });
    html.line("h2", "", "Where they are laid");
    html.table(
        List.of(
            Column.key("Leads", 12),
            Column.text("Along", 60),
            Column.number(Figures.head("Path mm", pack.units()), 9),
            Column.number(Figures.head("Off by at most mm", pack.units()), 10),
            Column.number(Figures.head("Likely mm", pack.units()), 9)),
        rows);
  }

  /** A run in words. */
  static String run(Pack pack, String id) {
    return pack.order().vehicle().runs().stream()
        .filter(it -> it.id().equals(id))
        .findFirst()
        .map(
            it ->
                it.follows()
                    + (it.passes().isEmpty() ? "" : ", through " + String.join(", ", it.passes())))
        .orElse(id);
  }

  private static void joints(Pack pack, Html html) {
    if (pack.plan().design().joints().isEmpty()) {
      return;
    }
    html.open("div", "keep").line("h2", "", "Joints made on the bench");
    html.table(
        List.of(
            Column.key("Joint", 10),
            Column.text("Place", 30),
            Column.text("Splice", 35),
            Column.text("Leads", 25)),
        pack.plan().design().joints().stream()
            .map(
                it ->
                    List.of(
                        it.id(),
                        pack.names().place(it.place()),
                        pack.names().part(it.splice()) + " (" + it.splice() + ")",
                        String.join(", ", it.leads())))
            .toList());
    html.close("div");
  }

  private static void housings(Pack pack, Html html) {
    if (pack.plan().design().housings().isEmpty()) {
      return;
    }
    html.open("div", "keep").line("h2", "", "Housings the kit brings");
    html.table(
        List.of(
            Column.key("Mates with", 30),
            Column.text("Part", 28),
            Column.text("Place", 18),
            Column.text("Filled cavities", 12),
            Column.text("Plugged cavities", 12)),
        pack.plan().design().housings().stream()
            .map(
                it ->
                    List.of(
                        Figures.capital(it.matesWith()),
                        pack.names().part(it.part()) + " (" + it.part() + ")",
                        pack.names().place(it.place()),
                        String.join(", ", it.used()),
                        it.plugged().isEmpty() ? "none" : String.join(", ", it.plugged())))
            .toList());
    html.close("div");
  }

  private static void fuses(Pack pack, Html html) {
    if (pack.plan().design().fuses().isEmpty()) {
      return;
    }
    html.open("div", "keep").line("h2", "", "Fuses");
    html.table(
        List.of(
            Column.key("Slot", 10),
            Column.text("Block", 28),
            Column.number("Rating A", 8),
            Column.text("Fuse", 24),
            Column.text("Protects", 16),
            Column.text("Fitted in", 14)),
        pack.plan().design().fuses().stream()
            .map(
                it ->
                    List.of(
                        it.slot(),
                        pack.names().owner(it.block()),
                        Figures.amps(it.ratingA()),
                        pack.names().part(it.part()) + " (" + it.part() + ")",
                        String.join(", ", it.leads()),
                        Names.cases(it.cases())))
            .toList());
    html.close("div");
  }
}
