package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Cases with the ways chosen for them, and all ways that were found. */
final class CasesSection implements Section {
  @Override
  public String id() {
    return "cases";
  }

  @Override
  public String title() {
    return "Cases and ways";
  }

  @Override
  public void write(Pack pack, Html html) {
    Plan plan = pack.plan();
    Map<String, List<Case>> byComponent =
        plan.cases().stream()
            .collect(
                Collectors.groupingBy(Case::component, LinkedHashMap::new, Collectors.toList()));
    byComponent.forEach(
        (component, cases) ->
            html.line("h2", "", component + " · " + cases.get(0).topic())
                .table(
                    List.of(
                        Column.key("Case", 7),
                        Column.text("Vehicles", 30),
                        Column.number("Builds", 10),
                        Column.number("Share", 9),
                        Column.text("How each need is met", 44)),
                    cases.stream().map(it -> caseRow(pack, it)).toList()));
    if (!plan.unserved().isEmpty()) {
      html.line("h2", "", "Not served");
      html.table(
          List.of(
              Column.key("Vehicles", 30),
              Column.number("Builds", 10),
              Column.text("Needs that can't be met together", 25),
              Column.text("Why", 35)),
          plan.unserved().stream()
              .map(
                  it ->
                      List.of(
                          it.words(),
                          Figures.count(it.builds()),
                          it.needs().stream()
                              .map(pack.names()::need)
                              .collect(Collectors.joining("\n")),
                          it.reason()))
              .toList());
    }
    ways(pack, html);
  }

  private static void ways(Pack pack, Html html) {
    String currency = pack.order().rules().hourlyRate().value().currency();
    html.line("h2", "", "All ways that were found");
    html.line(
        "p",
        "",
        "A way that is not allowed is listed with the reason. The id serves to forbid or prefer a"
            + " way in the kit's document.");
    Map<String, List<WayLine>> byNeed =
        pack.plan().ways().stream()
            .collect(Collectors.groupingBy(WayLine::need, LinkedHashMap::new, Collectors.toList()));
    byNeed.forEach(
        (need, ways) ->
            html.open("div", ways.size() <= 5 ? "keep" : "")
                .line("h3", "", Figures.capital(pack.names().need(need)))
                .table(
                    List.of(
                        Column.key("Way", 19),
                        Column.text("What is done", 27),
                        Column.text("Uses up", 16),
                        Column.number("Cost " + currency, 9),
                        Column.number("Builds", 9),
                        Column.text("Taken back, used in", 20)),
                    ways.stream().map(CasesSection::wayRow).toList())
                .close("div"));
  }

  private static List<String> caseRow(Pack pack, Case it) {
    List<String> ways = new ArrayList<>();
    it.ways()
        .forEach(
            (need, wayId) ->
                ways.add(
                    pack.names().need(need)
                        + ": "
                        + pack.plan().ways().stream()
                            .filter(way -> way.id().equals(wayId))
                            .map(WayLine::words)
                            .findFirst()
                            .orElse(wayId)));
    return List.of(
        it.id(),
        it.words(),
        Figures.count(it.builds()),
        Figures.share(it.share()),
        String.join("\n", ways));
  }

  private static List<String> wayRow(WayLine it) {
    String used =
        it.forbidden()
            .map(reason -> "not allowed: " + reason)
            .orElseGet(
                () ->
                    undo(it.undo())
                        + "\n"
                        + (it.cases().isEmpty()
                            ? "not chosen"
                            : "used in " + Names.cases(it.cases())));
    return List.of(
        it.id(),
        it.words(),
        String.join("\n", it.uses()),
        Figures.quantity(it.cost()),
        Figures.count(it.builds()),
        used);
  }

  static String undo(Undo undo) {
    return switch (undo) {
      case EASILY -> "easily taken back";
      case SPECIAL_TOOL -> "taken back with a special tool only";
      case NOT_AT_ALL -> "can't be taken back";
    };
  }
}
