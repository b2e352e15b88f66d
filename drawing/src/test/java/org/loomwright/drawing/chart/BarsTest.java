package org.loomwright.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.BarRow.State;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.drawing.ink.OddWords;
import org.w3c.dom.Element;

class BarsTest {
  static final List<BarRow> HEAT =
      List.of(
          row("L-A1-07, pump supply in the engine bay", 71.4, 105, 95, State.HOLDS, "holds"),
          row("L-A1-08, pump return", 99.2, 105, 95, State.MARGINAL, "marginal"),
          row("L-B2-03, lamp supply behind the dash", 92.6, 90, 80, State.FAILS, "2.6 K too hot"),
          row("L-B2-04, signal", 41, 90, 80, State.HOLDS, "holds"),
          new BarRow(
              "L-B2-05, sensor", OptionalDouble.empty(), 90, 80, State.UNKNOWN, "not proven"),
          row("L-C1-01, shorted on purpose", 640, 105, 95, State.FAILS, "far too hot"));

  @Test
  void tellsStatesByShapeAndWord() {
    for (double width : new double[] {98, 170}) {
      Looked bars = Looked.at(svg(HEAT, BarScale.of(HEAT, 20, "conductor", "°C"), width));
      bars.isSound();
      assertThat(bars.elements("rect", "bar")).hasSize(5);
      assertThat(bars.elements("path", "marginal-bar")).hasSize(1);
      assertThat(bars.elements("rect", "bar").stream().map(it -> it.getAttribute("fill")))
          .containsExactly("#fff", "#fff", "#222", "#fff", "#222");
      assertThat(bars.elements("path", "broken")).hasSize(2);
      String words = String.join(" ", bars.texts().stream().map(Looked.Text::words).toList());
      assertThat(words)
          .contains("71.4 of 105 °C: holds")
          .contains("99.2 of 105 °C: marginal")
          .contains("92.6 of 90 °C: 2.6 K too hot")
          .contains("not known, limit 90 °C: not proven");
    }
  }

  /** Ends of bars and limits against the figures at the axis, by the rule of three. */
  @Property(tries = 200)
  void drawsFiguresToTheAxis(
      @ForAll @DoubleRange(min = 0, max = 150) double figure,
      @ForAll @DoubleRange(min = 1, max = 100) double limit) {
    BarScale scale = new BarScale(0, 150, 25, "drop", "mV");
    List<BarRow> rows = List.of(row("x", figure, limit, limit / 2, State.HOLDS, "ok"));
    Looked bars = Looked.at(svg(rows, scale, 170));
    double zero = axis(bars, "0");
    double hundred = axis(bars, "100");

    assertThat(Looked.box(bars.elements("rect", "bar").get(0)).right())
        .isCloseTo(zero + figure / 100 * (hundred - zero), within(0.03));
    Box band = Looked.box(bars.elements("rect", "marginal").get(0));
    assertThat(band.left()).isCloseTo(zero + limit / 200 * (hundred - zero), within(0.03));
    assertThat(band.right()).isCloseTo(zero + limit / 100 * (hundred - zero), within(0.03));
    Element mark = bars.elements("path", "limit").get(1);
    assertThat(Double.parseDouble(mark.getAttribute("d").split("[M,]", 3)[1]))
        .isCloseTo(zero + limit / 100 * (hundred - zero), within(0.03));
  }

  @Property(tries = 250)
  void neverPutsTextOverText(
      @ForAll("pages") List<BarRow> rows,
      @ForAll("starts") double from,
      @ForAll("words") String quantity,
      @ForAll @DoubleRange(min = 90, max = 400) double width) {
    BarScale scale = BarScale.of(rows, from, quantity, "V");
    String svg = svg(rows, scale, width);

    Looked bars = Looked.at(svg);
    bars.isSound();
    assertThat(svg(rows, scale, width)).isEqualTo(svg);
    assertThat(bars.elements("polygon", "limit-head")).hasSize(rows.size());
    assertThat(scale.marks()).hasSizeBetween(2, 12);
    double height =
        Bars.headMm(scale, width)
            + rows.stream().mapToDouble(it -> Bars.rowHeightMm(it, scale, width)).sum();
    String root = svg.substring(0, svg.indexOf('>'));
    assertThat(Double.parseDouble(root.split("viewBox=\"0 0 ", 2)[1].split("[ \"]", 3)[1]))
        .isCloseTo(height, within(0.01));
  }

  /** For people to look at: the pictures are left beside the compiled classes. */
  @Test
  void leavesPicturesToLookAt() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    BarScale scale = BarScale.of(HEAT, 20, "conductor temperature", "°C");
    for (double width : new double[] {98, 170}) {
      Path file = folder.resolve("heat-" + (int) width + ".svg");
      assertThat(Files.writeString(file, svg(HEAT, scale, width))).isNotEmptyFile();
    }
  }

  @Test
  void refusesFiguresThatAreNone() {
    assertThatThrownBy(() -> row("L1", Double.NaN, 1, 1, State.HOLDS, ""))
        .hasMessageContaining("L1: figure is NaN");
    assertThatThrownBy(() -> row("L1", 1, 1, 2, State.HOLDS, ""))
        .hasMessageContaining("above the limit");
    assertThatThrownBy(() -> new BarScale(1, 1, 1, "", "")).hasMessageContaining("can't be drawn");
  }

  @Provide
  Arbitrary<List<BarRow>> pages() {
    Arbitrary<Double> figure =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(-50, 200).ofScale(9),
            Arbitraries.doubles().between(-1e9, 1e9).ofScale(9),
            Arbitraries.doubles().between(0, 1e-6).ofScale(9));
    return Combinators.combine(
            OddWords.any(),
            figure.optional(),
            figure,
            figure,
            Arbitraries.of(State.class),
            OddWords.any())
        .as(
            (name, value, a, b, state, verdict) ->
                new BarRow(
                    name,
                    value.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    Math.max(a, b),
                    Math.min(a, b),
                    state,
                    verdict))
        .list()
        .ofMaxSize(15);
  }

  @Provide
  Arbitrary<Double> starts() {
    return Arbitraries.oneOf(
        Arbitraries.just(0.0), Arbitraries.doubles().between(-1e9, 1e9).ofScale(9));
  }

  @Provide
  Arbitrary<String> words() {
    return OddWords.any();
  }

  private static double axis(Looked bars, String figure) {
    return bars.texts().stream()
        .filter(
            it ->
                it.words().equals(figure)
                    && it.middleY() < Bars.headMm(new BarScale(0, 1, 1, "x", "x"), 170))
        .map(it -> (it.box().left() + it.box().right()) / 2)
        .findFirst()
        .orElseThrow();
  }

  static String svg(List<BarRow> rows, BarScale scale, double width) {
    return Bars.svg(rows, scale, width, Lettering.fitted());
  }

  static BarRow row(
      String name, double figure, double limit, double marginal, State state, String verdict) {
    return new BarRow(name, OptionalDouble.of(figure), limit, marginal, state, verdict);
  }
}
