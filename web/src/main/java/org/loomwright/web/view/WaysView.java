package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.Wish;
import org.loomwright.model.kit.WishKind;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/**
 * All ways of a kit by the need they meet, with what its maker wishes of each.
 *
 * @param needs needs with their ways
 * @param lost wishes about ways that there are not, or not any more
 */
public record WaysView(List<NeedWays> needs, List<Wish> lost) {

  /**
   * The ways of one need.
   *
   * @param words the need
   * @param ways its ways, those in use first
   */
  public record NeedWays(String words, List<Row> ways) {
    public NeedWays {
      ways = List.copyOf(ways);
    }
  }

  /**
   * One way.
   *
   * @param id its id
   * @param words the way in words
   * @param builds on how many builds it can be used
   * @param cost what it costs
   * @param undo how it is taken back
   * @param uses what it uses up
   * @param cases cases that use it
   * @param wish what is wished of it: "forbid", "prefer" or empty
   * @param reason why that is wished
   * @param forbidden why it is not allowed, whatever is wished; empty when it is
   */
  public record Row(
      String id,
      String words,
      String builds,
      String cost,
      String undo,
      String uses,
      String cases,
      String wish,
      String reason,
      String forbidden) {

    /** What became of the way, in a word with a sign of its own. */
    public String state() {
      if (wish.equals("forbid")) {
        return "✕ forbidden by you";
      }
      if (!forbidden.isEmpty()) {
        return "✕ not allowed";
      }
      return cases.isEmpty() ? "– not used" : "✓ used on " + cases;
    }
  }

  public WaysView {
    needs = List.copyOf(needs);
    lost = List.copyOf(lost);
  }

  /** The ways of a plan. */
  public static WaysView of(Names names) {
    Plan plan = names.plan();
    Kit kit = plan.kit();
    Map<String, List<Row>> byNeed = new LinkedHashMap<>();
    for (WayLine it : plan.ways()) {
      byNeed.computeIfAbsent(it.need(), need -> new ArrayList<>()).add(row(it, kit, names));
    }
    List<NeedWays> needs = new ArrayList<>();
    byNeed.forEach(
        (need, rows) -> {
          List<Row> sorted = new ArrayList<>(rows.stream().filter(WaysView::isUsed).toList());
          rows.stream().filter(it -> !isUsed(it)).forEach(sorted::add);
          needs.add(new NeedWays(Figures.capital(names.need(need)), sorted));
        });
    List<Wish> lost =
        kit.wishes().stream()
            .filter(wish -> plan.ways().stream().noneMatch(it -> it.id().equals(wish.way())))
            .toList();
    return new WaysView(needs, lost);
  }

  private static boolean isUsed(Row row) {
    return !row.cases().isEmpty();
  }

  private static Row row(WayLine way, Kit kit, Names names) {
    Optional<Wish> wish = kit.wishes().stream().filter(it -> it.way().equals(way.id())).findFirst();
    String kind = wish.map(it -> it.wish() == WishKind.FORBID ? "forbid" : "prefer").orElse("");
    return new Row(
        way.id(),
        Figures.capital(names.prose(way.words())),
        Figures.builds(way.builds()),
        Figures.quantity(way.cost()) + " " + names.order().rules().hourlyRate().value().currency(),
        Told.undo(way.undo()),
        names.prose(String.join(", ", way.uses())),
        way.cases().isEmpty()
            ? ""
            : (way.cases().size() == 1 ? "case " : "cases ") + String.join(", ", way.cases()),
        kind,
        wish.map(Wish::reason).orElse(""),
        kind.equals("forbid")
            ? ""
            : way.forbidden()
                .map(names::prose)
                .orElse(way.builds().signum() == 0 ? "no possible build allows it" : ""));
  }
}
