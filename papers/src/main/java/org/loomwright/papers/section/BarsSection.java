package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomwright.drawing.chart.BarRow;
import org.loomwright.drawing.chart.BarScale;
import org.loomwright.drawing.chart.Bars;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Heat and voltage drop of all leads and pins against their limits, as bars. */
final class BarsSection implements Section {
  private static final double WIDTH_MM = 174;
  private static final double HEIGHT_MM = 205;
  private static final List<String> HEAT = List.of("rise of the conductor");
  private static final List<String> DROP = List.of("voltage drop");

  @Override
  public String id() {
    return "bars";
  }

  @Override
  public String title() {
    return "Heat and drop at a glance";
  }

  /** Whether a plan has anything to show. */
  static boolean hasAny(Plan plan) {
    return plan.checks().stream().anyMatch(BarsSection::shown);
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "A bar for each figure; the mark with a head is its limit, the shaded stretch before it is"
            + " where it counts as marginal. Light bars hold, hatched ones are marginal, dark ones"
            + " fail.");
    for (Map.Entry<String, List<Check>> group : groups(pack.plan()).entrySet()) {
      List<BarRow> rows = group.getValue().stream().map(it -> row(pack, it)).toList();
      BarScale scale =
          BarScale.of(rows, 0, Figures.capital(group.getKey()), group.getValue().get(0).unit());
      for (List<BarRow> page : pages(rows, scale)) {
        html.open("div", "keep bars")
            .picture(Bars.svg(page, scale, WIDTH_MM, pack.lettering()))
            .close("div");
      }
    }
  }

  private static boolean shown(Check check) {
    return check.atMost()
        && (HEAT.stream().anyMatch(check.name()::startsWith) && check.unit().equals("K")
            || DROP.stream().anyMatch(check.name()::startsWith) && check.unit().equals("V"));
  }

  /** Checks that share an axis, by what they are about. */
  private static Map<String, List<Check>> groups(Plan plan) {
    Map<String, List<Check>> groups = new LinkedHashMap<>();
    plan.checks().stream()
        .filter(BarsSection::shown)
        .forEach(it -> groups.computeIfAbsent(it.name(), name -> new ArrayList<>()).add(it));
    return groups;
  }

  static BarRow row(Pack pack, Check check) {
    double band = pack.order().rules().marginalBand().value().fraction();
    return new BarRow(
        Figures.capital(pack.names().brief(pack.names().prose(check.subject())))
            + (check.cases().isEmpty() ? "" : ", " + Names.cases(check.cases())),
        Double.isFinite(check.figure())
            ? OptionalDouble.of(check.figure())
            : OptionalDouble.empty(),
        check.limit(),
        check.limit() - band * Math.abs(check.limit()),
        !Double.isFinite(check.figure())
            ? BarRow.State.UNKNOWN
            : switch (check.verdict()) {
              case HOLDS -> BarRow.State.HOLDS;
              case MARGINAL -> BarRow.State.MARGINAL;
              case FAILS -> BarRow.State.FAILS;
            },
        check.verdict().name().toLowerCase(Locale.ROOT));
  }

  private static List<List<BarRow>> pages(List<BarRow> rows, BarScale scale) {
    List<List<BarRow>> pages = new ArrayList<>();
    List<BarRow> page = new ArrayList<>();
    double used = Bars.headMm(scale, WIDTH_MM);
    for (BarRow row : rows) {
      double high = Bars.rowHeightMm(row, scale, WIDTH_MM);
      if (!page.isEmpty() && used + high > HEIGHT_MM) {
        pages.add(List.copyOf(page));
        page.clear();
        used = Bars.headMm(scale, WIDTH_MM);
      }
      page.add(row);
      used += high;
    }
    pages.add(List.copyOf(page));
    return pages;
  }
}
