package org.loomwright.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
import org.loomwright.drawing.chart.ProtectionPlot.Load;
import org.loomwright.drawing.chart.ProtectionPlot.Point;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.drawing.ink.Looked.Text;
import org.loomwright.drawing.ink.OddWords;
import org.w3c.dom.Element;

class ProtectionChartTest {

  @Test
  void namesEverythingInTheChartOfAPump() {
    for (double width : new double[] {98, 130, 170}) {
      String svg = ProtectionChartPicture.svg(Plots.pump(), width, Lettering.fitted());
      Looked chart = Looked.at(svg);
      chart.isSound();
      assertThat(svg).doesNotContain("Also in the chart");
      String words = words(chart);
      assertThat(words)
          .contains("fuse F3, 15 A: open above")
          .contains("fuse F3, 15 A: closed below")
          .contains("wire 1.5 mm²: damaged above")
          .contains("steady load: 8.2 A for 100 h")
          .contains("start of the coolant pump: 31 A for 0.2 s")
          .contains("pump stalled: 38 A for 6 s")
          .contains("smallest fault 142 A")
          .contains("largest fault 1350 A");
    }
  }

  /** Told apart without colour: by width, hatching, dashes and the shapes of the marks. */
  @Test
  void tellsLinesApartWithoutColour() {
    Looked chart = Looked.at(ProtectionChartPicture.svg(Plots.pump(), 170, Lettering.fitted()));
    assertThat(
            List.of("earliest", "latest", "damage").stream()
                .map(it -> chart.elements("path", it).get(0).getAttribute("stroke-width")))
        .doesNotHaveDuplicates();
    assertThat(
            List.of("smallest-fault", "largest-fault").stream()
                .map(it -> chart.elements("path", it).get(0).getAttribute("stroke-dasharray")))
        .doesNotHaveDuplicates()
        .doesNotContain("");
    assertThat(chart.elements("path", "band")).hasSize(1);
    assertThat(chart.elements("circle", "load")).hasSize(1);
    assertThat(chart.elements("rect", "load")).hasSize(1);
    assertThat(chart.elements("polygon", "load")).hasSize(1);
  }

  @Property(tries = 200)
  void neverPutsTextOverText(
      @ForAll("plots") ProtectionPlot plot,
      @ForAll @DoubleRange(min = 90, max = 400) double width) {
    String svg = ProtectionChartPicture.svg(plot, width, Lettering.fitted());

    Looked chart = Looked.at(svg);
    chart.isSound();
    assertThat(ProtectionChartPicture.svg(plot, width, Lettering.fitted())).isEqualTo(svg);
    // Every load is named, in the chart or under it.
    String words = words(chart).replace(" ", "");
    for (Load load : plot.loads()) {
      String name = load.name().replaceAll("[\\s\\p{Cntrl}]+", "");
      if (name.matches("[A-Za-z]*")) {
        assertThat(words).contains(name + ":");
      }
    }
  }

  /**
   * The place of a mark by plain logarithms from the figures written at the axes, which is what a
   * reader does with a ruler.
   */
  @Property(tries = 200)
  void putsMarksWhereTheFiguresAtTheAxesSay(
      @ForAll @DoubleRange(min = 0.01, max = 5000) double currentA,
      @ForAll @DoubleRange(min = 0.01, max = 100000) double timeS,
      @ForAll @DoubleRange(min = 90, max = 250) double width) {
    ProtectionPlot pump = Plots.pump();
    ProtectionPlot plot =
        new ProtectionPlot(
            pump.fuse(),
            pump.wire(),
            pump.earliest(),
            pump.latest(),
            pump.damage(),
            List.of(new Load("x", new Point(currentA, timeS))),
            pump.smallestFaultA(),
            pump.largestFaultA());
    Looked chart = Looked.at(ProtectionChartPicture.svg(plot, width, Lettering.fitted()));
    Box frame = Looked.box(chart.elements("rect", "frame").get(0));
    List<Text> currents =
        chart.texts().stream()
            .filter(it -> Math.abs(it.middleY() - frame.bottom() - 2.8) < 0.05)
            .toList();
    List<Text> times =
        chart.texts().stream()
            .filter(it -> Math.abs(it.box().right() - frame.left() + 1.2) < 0.05)
            .toList();
    Element mark = chart.elements("circle", "load").get(0);

    double left = Math.log10(figure(currents.get(0)));
    double right = Math.log10(figure(currents.get(currents.size() - 1)));
    double leftX = middleX(currents.get(0));
    double rightX = middleX(currents.get(currents.size() - 1));
    assertThat(Math.abs(rightX - leftX)).isGreaterThan(10);
    assertThat(Looked.number(mark, "cx"))
        .isCloseTo(
            leftX + (Math.log10(currentA) - left) / (right - left) * (rightX - leftX), within(0.1));

    double low = Math.log10(figure(times.get(0)));
    double high = Math.log10(figure(times.get(times.size() - 1)));
    double lowY = times.get(0).middleY();
    double highY = times.get(times.size() - 1).middleY();
    assertThat(Math.abs(highY - lowY)).isGreaterThan(30);
    assertThat(Looked.number(mark, "cy"))
        .isCloseTo(lowY + (Math.log10(timeS) - low) / (high - low) * (highY - lowY), within(0.1));
  }

  @Test
  void isTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      String first = ProtectionChartPicture.svg(Plots.pump(), 170, Lettering.text());
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(ProtectionChartPicture.svg(Plots.pump(), 170, Lettering.text())).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  /** For people to look at: the pictures are left beside the compiled classes. */
  @Test
  void leavesPicturesToLookAt() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    for (double width : new double[] {98, 170}) {
      for (ProtectionPlot plot : List.of(Plots.pump(), Plots.lamp())) {
        String name =
            "protection-" + (plot.loads().size() > 1 ? "pump" : "lamp") + "-" + (int) width;
        String svg = ProtectionChartPicture.svg(plot, width, Lettering.fitted());
        assertThat(Files.writeString(folder.resolve(name + ".svg"), svg)).isNotEmptyFile();
      }
    }
  }

  @Test
  void refusesWhatALogarithmicAxisCannotShow() {
    assertThatThrownBy(() -> new Point(0, 1)).hasMessageContaining("current is 0.0 A");
    assertThatThrownBy(() -> new Point(1, Double.NaN)).hasMessageContaining("time is NaN s");
    assertThatThrownBy(() -> ProtectionChartPicture.svg(Plots.lamp(), 50, Lettering.text()))
        .hasMessageContaining("too narrow");
  }

  @Provide
  Arbitrary<ProtectionPlot> plots() {
    Arbitrary<Point> point =
        Combinators.combine(
                Arbitraries.doubles().between(-3, 6), Arbitraries.doubles().between(-11, 7))
            .as(
                (a, s) ->
                    new Point(
                        Math.min(1e6, Math.max(1e-3, Math.pow(10, a))),
                        Math.min(1e7, Math.max(1e-12, Math.pow(10, s)))));
    Arbitrary<List<Point>> line = point.list().ofMaxSize(12);
    Arbitrary<List<Load>> loads =
        Combinators.combine(OddWords.any(), point).as(Load::new).list().ofMaxSize(25);
    Arbitrary<OptionalDouble> fault =
        Arbitraries.doubles()
            .between(0.001, 1e6)
            .ofScale(3)
            .optional()
            .map(it -> it.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    Arbitrary<ProtectionPlot> wild =
        Combinators.combine(OddWords.any(), OddWords.any(), line, line, line, loads, fault, fault)
            .as(ProtectionPlot::new);
    Arbitrary<ProtectionPlot> real =
        Combinators.combine(
                Arbitraries.of(2.0, 7.5, 30.0, 150.0),
                Arbitraries.of(0.35, 2.5, 35.0),
                loads,
                Arbitraries.doubles().between(1.2, 100))
            .as(
                (rating, area, it, times) -> {
                  double big = times * Math.max(12 * area, 6 * rating);
                  return Plots.plot(rating, area, 12 * area, it, big / 2, big);
                });
    return Arbitraries.oneOf(wild, real);
  }

  private static String words(Looked chart) {
    return String.join(" ", chart.texts().stream().map(Text::words).toList());
  }

  private static double figure(Text text) {
    return Double.parseDouble(text.words());
  }

  private static double middleX(Text text) {
    return (text.box().left() + text.box().right()) / 2;
  }
}
