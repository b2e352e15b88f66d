package org.loomwright.papers.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.BarRow;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.drawing.ink.RenderedTexts;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Check;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.RandomKits;
import org.loomwright.papers.calculation.DemoKits;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

/** The pictures of the papers, read back and as a browser sets them. */
class PicturesTest {
  private static final Pattern SVG = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL);
  private static final double[] WIDTHS = {98, 175, 269};

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void picturesOfTheDemo(String kit) {
    look(DemoKits.planned(kit));
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 5, 11})
  void picturesOfRandomKits(long seed) {
    KitOrder order = RandomKits.of(seed);
    look(new Names(order, Planner.plan(order)));
  }

  private static void look(Names names) {
    Pack pack = new Pack(names, Lettering.fitted());
    Html html = new Html();
    List<Section> sections =
        List.of(new RunMapSection(), new BundlesSection(), new StripsSection(), new BarsSection());
    sections.forEach(it -> it.write(pack, html));
    names.plan().design().leads().forEach(it -> ProtectionCharts.write(pack, it.id(), html));
    List<String> pictures = new ArrayList<>();
    Matcher found = SVG.matcher(html.markup());
    while (found.find()) {
      pictures.add(found.group());
    }
    for (double width : WIDTHS) {
      pictures.add(
          RunMap.svg(
              names.plan(), names.order().vehicle(), Optional.empty(), width, Lettering.fitted()));
    }
    assertThat(pictures)
        .hasSizeGreaterThan(
            names.plan().harness().bundles().size() + names.plan().protections().size() + 5)
        .noneMatch(it -> it.contains("NaN"));
    pictures.forEach(it -> Looked.at(it).isSound());
    RenderedTexts.of(pictures).areSound();
    for (Bundle bundle : names.plan().harness().bundles()) {
      assertThat(html.markup()).contains("section of the bundle on run " + bundle.run());
    }
    barsAreRight(pack);
  }

  /** Bars stand as their checks do: the band begins where a figure turns marginal. */
  private static void barsAreRight(Pack pack) {
    int bars = 0;
    for (Check check : pack.plan().checks()) {
      boolean heatOrDrop =
          check.name().startsWith("rise of the conductor")
              || check.name().startsWith("voltage drop");
      if (!heatOrDrop) {
        continue;
      }
      bars++;
      BarRow row = BarsSection.row(pack, check);
      assertThat(row.figure().orElseThrow()).isEqualTo(check.figure());
      assertThat(row.limit()).isEqualTo(check.limit());
      assertThat(row.state().name()).isEqualTo(check.verdict().name());
      switch (row.state()) {
        case HOLDS -> assertThat(check.figure()).isLessThanOrEqualTo(row.marginalFrom() + 1e-9);
        case MARGINAL ->
            assertThat(check.figure()).isBetween(row.marginalFrom() - 1e-9, row.limit());
        default -> assertThat(check.figure()).isGreaterThan(row.limit());
      }
    }
    assertThat(bars).isPositive();
    Html html = new Html();
    new BarsSection().write(pack, html);
    assertThat(html.markup().split("class=\"limit-head\"", -1)).hasSize(bars + 1);
  }
}
