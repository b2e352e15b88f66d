package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.drawing.chart.BarRow;
import org.loomwright.drawing.chart.BarScale;
import org.loomwright.drawing.chart.Bars;
import org.loomwright.drawing.chart.ProtectionChartPicture;
import org.loomwright.drawing.chart.ProtectionPlot;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.ProtectionCurve;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.web.units.UnitWords;

/** Pictures of the checks: heat and drop as bars, fuses against their wires. */
final class SumPictures {
  private SumPictures() {}

  /**
   * The parts of the page of sums that are pictures; those without anything to show are left out.
   */
  static List<KitPages.Part> of(Pack pack) {
    List<KitPages.Part> parts = new ArrayList<>();
    StringBuilder bars = new StringBuilder();
    groups(pack).forEach((name, checks) -> bars.append(bars(pack, name, checks)));
    if (!bars.isEmpty()) {
      parts.add(
          new KitPages.Part(
              "bars",
              "Heat and drop at a glance",
              "<p>A bar for each figure; the mark with a head is its limit, the shaded stretch"
                  + " before it is where it counts as marginal. Light bars hold, hatched ones are"
                  + " marginal, dark ones fail.</p>"
                  + bars));
    }
    StringBuilder charts = new StringBuilder();
    pack.plan().protections().forEach(it -> charts.append(chart(pack, it)));
    if (!charts.isEmpty()) {
      parts.add(
          new KitPages.Part(
              "fuses",
              "Fuses against their wires",
              "<p>A fuse opens within the hatched band. From the smallest to the largest fault it"
                  + " has to be open before the thick line, where the wire is damaged; loads in"
                  + " sound use stay below the band.</p><div class=\"charts\">"
                  + charts
                  + "</div>"));
    }
    return parts;
  }

  private static Map<String, List<Check>> groups(Pack pack) {
    Map<String, List<Check>> groups = new LinkedHashMap<>();
    for (Check it : pack.plan().checks()) {
      boolean heat = it.name().startsWith("rise of the conductor") && it.unit().equals("K");
      boolean drop = it.name().startsWith("voltage drop") && it.unit().equals("V");
      if (it.atMost() && (heat || drop)) {
        groups.computeIfAbsent(it.name(), name -> new ArrayList<>()).add(it);
      }
    }
    return groups;
  }

  private static String bars(Pack pack, String name, List<Check> checks) {
    List<BarRow> rows = checks.stream().map(it -> row(pack, it)).toList();
    BarScale scale = BarScale.of(rows, 0, Figures.capital(name), checks.get(0).unit());
    return KitPages.both(width -> Bars.svg(rows, scale, width, pack.lettering()));
  }

  private static BarRow row(Pack pack, Check check) {
    double band = pack.order().rules().marginalBand().value().fraction();
    boolean known = Double.isFinite(check.figure());
    return new BarRow(
        Figures.capital(pack.names().brief(pack.names().prose(check.subject())))
            + (check.cases().isEmpty() ? "" : ", " + Names.cases(check.cases())),
        known ? OptionalDouble.of(check.figure()) : OptionalDouble.empty(),
        check.limit(),
        check.limit() - band * Math.abs(check.limit()),
        !known
            ? BarRow.State.UNKNOWN
            : switch (check.verdict()) {
              case HOLDS -> BarRow.State.HOLDS;
              case MARGINAL -> BarRow.State.MARGINAL;
              case FAILS -> BarRow.State.FAILS;
            },
        check.verdict().name().toLowerCase(Locale.ROOT));
  }

  private static String chart(Pack pack, ProtectionCurve it) {
    ProtectionPlot plot =
        new ProtectionPlot(
            // The heading says where it is.
            it.fuse().replaceFirst(" A (in|of|before) .*", " A"),
            new UnitWords(pack.units(), List.of()).of(it.wire()),
            points(it.earliest()),
            points(it.latest()),
            points(it.damage()),
            it.loads().stream()
                .map(
                    load ->
                        new ProtectionPlot.Load(
                            load.name(), new ProtectionPlot.Point(load.currentA(), load.timeS())))
                .toList(),
            known(it.smallestFaultA()),
            known(it.largestFaultA()));
    String title = "Lead " + it.lead() + ", " + pack.names().prose(it.fuse());
    return new Html().open("div", "chart").line("h3", "", title).markup()
        + "<div class=\"picture\">"
        + KitPages.flexible(ProtectionChartPicture.svg(plot, 110, pack.lettering()))
        + "</div></div>";
  }

  private static OptionalDouble known(Optional<Double> currentA) {
    return currentA.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private static List<ProtectionPlot.Point> points(List<ProtectionCurve.At> line) {
    return line.stream().map(it -> new ProtectionPlot.Point(it.currentA(), it.timeS())).toList();
  }
}
