package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Lead;
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
    writeForScreen(pack, html);
    ways(pack, html);
  }

  /** The pages offer the ways to be forbidden or preferred. */
  @Override
  public void writeForScreen(Pack pack, Html html) {
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
                        Column.text("Vehicles", 31),
                        Column.number("Builds", 9),
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
                              .map(pack.names()::pin)
                              .collect(Collectors.joining("\n")),
                          pack.names().prose(it.reason())))
              .toList());
    }
  }

  private static void ways(Pack pack, Html html) {
    html.line("h2", "", "Ways that were found");
    html.line(
        "p",
        "",
        "The ways each need could be met, chosen ones first, with what they cost. The id serves to"
            + " forbid or prefer a way in the kit's document. What each way uses up, and every way"
            + " that is left out, stands in result.json.");
    Map<String, List<WayLine>> byNeed =
        pack.plan().ways().stream()
            .collect(Collectors.groupingBy(WayLine::need, LinkedHashMap::new, Collectors.toList()));
    byNeed.forEach((need, ways) -> waysOf(pack, need, ways, html));
  }

  private static void waysOf(Pack pack, String need, List<WayLine> ways, Html html) {
    String currency = pack.order().rules().hourlyRate().value().currency();
    List<WayLine> usable =
        ways.stream()
            .filter(it -> it.forbidden().isEmpty() && it.builds().signum() > 0)
            .sorted(
                Comparator.comparing((WayLine it) -> it.cases().isEmpty())
                    .thenComparingDouble(WayLine::cost)
                    .thenComparing(WayLine::id))
            .toList();
    html.open("div", usable.size() <= 5 ? "keep" : "")
        .line("h3", "", Figures.capital(pack.names().need(need)));
    if (usable.isEmpty()) {
      html.line("p", "", "No way can be used on any build.");
    } else {
      html.table(
          List.of(
              Column.key("Way", 28),
              Column.text("What is done", 33),
              Column.number("Cost " + currency, 9),
              Column.number("Builds", 9),
              Column.text("Taken back; used in", 21)),
          usable.stream().map(CasesSection::wayRow).toList());
    }
    Map<String, Integer> refused = new TreeMap<>();
    for (WayLine it : ways) {
      if (it.forbidden().isPresent() || it.builds().signum() == 0) {
        refused.merge(
            it.forbidden()
                .map(reason -> pack.names().prose(reason))
                .orElse("no possible build allows it"),
            1,
            Integer::sum);
      }
    }
    if (!refused.isEmpty()) {
      html.line(
          "p",
          "refused",
          "Left out: "
              + refused.entrySet().stream()
                  .map(it -> counted(it.getValue()) + " because " + it.getKey())
                  .collect(Collectors.joining("; "))
              + ".");
    }
    html.close("div");
  }

  private static String counted(int ways) {
    return ways + (ways == 1 ? " way" : " ways");
  }

  private static List<String> caseRow(Pack pack, Case it) {
    List<String> ways = new ArrayList<>();
    it.ways()
        .forEach(
            (need, wayId) ->
                ways.add(
                    pack.names().pin(need)
                        + ": "
                        + pack.plan().ways().stream()
                            .filter(way -> way.id().equals(wayId))
                            .map(WayLine::words)
                            .findFirst()
                            .orElse(wayId)));
    if (it.ways().isEmpty()) {
      ways.add(ownLeads(pack.plan(), it));
    }
    return List.of(
        it.id(),
        it.words(),
        Figures.count(it.builds()),
        Figures.share(it.share()),
        String.join("\n", ways));
  }

  private static String ownLeads(Plan plan, Case it) {
    String used =
        plan.design().leads().stream()
            .filter(lead -> lead.component().equals(it.component()) && lead.isUsedIn(it.id()))
            .map(Lead::id)
            .collect(Collectors.joining(", "));
    return used.isEmpty() ? "not used here" : used;
  }

  private static List<String> wayRow(WayLine it) {
    return List.of(
        it.id(),
        it.words(),
        Figures.quantity(it.cost()),
        Figures.count(it.builds()),
        undo(it.undo()) + "; " + (it.cases().isEmpty() ? "not chosen" : Names.cases(it.cases())));
  }

  static String undo(Undo undo) {
    return switch (undo) {
      case EASILY -> "easily";
      case SPECIAL_TOOL -> "special tool only";
      case NOT_AT_ALL -> "not at all";
    };
  }
}
