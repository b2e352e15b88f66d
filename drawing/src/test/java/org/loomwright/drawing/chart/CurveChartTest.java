package org.loomwright.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.CurvePlot.Axis;
import org.loomwright.drawing.chart.CurvePlot.Curve;
import org.loomwright.drawing.chart.CurvePlot.Dot;
import org.loomwright.drawing.chart.CurvePlot.Here;
import org.loomwright.drawing.chart.CurvePlot.Limit;
import org.loomwright.drawing.chart.CurvePlot.Point;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Looked;
import org.w3c.dom.Element;

/** Charts of the sums and of loads. */
class CurveChartTest {

  /** The mark stands where its figures are on the axes, by the rule of three between two marks. */
  @Property(tries = 200)
  void marksThePointAskedAbout(
      @ForAll @DoubleRange(min = 0, max = 10) double x,
      @ForAll @DoubleRange(min = 0, max = 100) double y) {
    CurvePlot plot =
        new CurvePlot(
            "test",
            Axis.fromZero("length in m"),
            Axis.fromZero("drop in %"),
            List.of(new Curve("wire", List.of(new Point(0, 0), new Point(10, 100)), false)),
            List.of(),
            List.of(),
            Optional.of(new Here("here", new Point(x, y))));
    Looked chart = Looked.at(CurveChart.svg(plot, 150, Lettering.fitted()));
    chart.isSound();
    Element mark = chart.elements("circle", "here").get(0);
    Box frame = Looked.box(chart.elements("rect", "frame").get(0));
    double top = marked(chart, "100").middleY();
    double half = marked(chart, "50").middleY();
    assertThat(Double.parseDouble(mark.getAttribute("cx")))
        .isCloseTo(frame.left() + x / 10 * frame.width(), within(0.02));
    assertThat(Double.parseDouble(mark.getAttribute("cy")))
        .isCloseTo(top + (100 - y) / 50 * (half - top), within(0.05));
  }

  private static Looked.Text marked(Looked chart, String words) {
    return chart.texts().stream()
        .filter(it -> it.words().equals(words) && it.box().right() < 14)
        .findFirst()
        .orElseThrow();
  }

  /** Whatever is shown, no text lies over another, and every name is told. */
  @Property(tries = 300)
  void neverPutsTextOverText(
      @ForAll @Size(min = 2, max = 12)
          List<@DoubleRange(min = 0.001, max = 5000) Double> heights,
      @ForAll @DoubleRange(min = 0.001, max = 5000) double limit,
      @ForAll @IntRange(max = 11) int at,
      @ForAll boolean decades,
      @ForAll boolean narrow) {
    List<Point> points = new ArrayList<>();
    for (double height : heights) {
      points.add(new Point(1 + points.size(), height));
    }
    CurvePlot plot =
        new CurvePlot(
            "test",
            decades ? Axis.decades("time in s") : Axis.linear("time in s"),
            decades ? Axis.decades("current in A") : Axis.fromZero("current in A"),
            List.of(
                new Curve("wire 2.5 mm²", points, false),
                new Curve(
                    "by the handbook",
                    points.stream().map(it -> new Point(it.x(), 0.8 * it.y())).toList(),
                    true)),
            List.of(new Limit("at most", limit, false), new Limit("longest", 3, true)),
            points.stream().map(it -> new Dot("d" + it.x(), it, it.y() < limit)).toList(),
            Optional.of(new Here("typed: 5.2 A", points.get(at % points.size()))));
    Looked chart = Looked.at(CurveChart.svg(plot, narrow ? 82 : 150, Lettering.fitted()));
    chart.isSound();
    String words = String.join(" ", chart.texts().stream().map(Looked.Text::words).toList());
    assertThat(words).contains("wire", "handbook", "at most", "longest", "typed");
    long full = points.stream().filter(it -> it.y() < limit).count();
    assertThat(chart.elements("circle", "size-holds")).hasSize((int) full);
    assertThat(chart.elements("circle", "size-fails")).hasSize(points.size() - (int) full);
  }

  @Test
  void nothingToShowIsRefused() {
    assertThatThrownBy(
            () ->
                new CurvePlot(
                    "t",
                    Axis.linear("x"),
                    Axis.linear("y"),
                    List.of(),
                    List.of(),
                    List.of(),
                    Optional.empty()))
        .hasMessageContaining("nothing to show");
  }

  /** Pieces, cuts and rest of a bar fill it: their places are those of the sum of what is before. */
  @Test
  void barsAreCutToScale() {
    List<StockBars.Piece> pieces =
        List.of(new StockBars.Piece("400", 400), new StockBars.Piece("350", 350));
    Looked bars =
        Looked.at(
            StockBars.svg(
                "cut",
                1000,
                10,
                List.of(new StockBars.Bar("2 ×: 400, 350", pieces, 240)),
                101.2,
                Lettering.fitted()));
    bars.isSound();
    List<Element> drawn = bars.elements("rect", "piece");
    assertThat(Looked.box(drawn.get(0)).width()).isCloseTo(40, within(0.02));
    assertThat(Looked.box(drawn.get(1)).left()).isCloseTo(0.6 + 41, within(0.02));
    assertThat(bars.elements("path", "rest")).hasSize(1);
  }

  @Test
  void bundlesAreDrawnToScale() {
    List<RoundBundle.Wire> wires =
        List.of(new RoundBundle.Wire("2", -1, 0, 2), new RoundBundle.Wire("2", 1, 0, 2));
    Looked bundle =
        Looked.at(RoundBundle.svg("b", wires, 4, "4 mm", 82, Lettering.fitted()));
    bundle.isSound();
    double whole = radius(bundle.elements("circle", "bundle").get(0));
    bundle
        .elements("circle", "wire")
        .forEach(it -> assertThat(radius(it)).isCloseTo(whole / 2, within(0.02)));
  }

  private static double radius(Element circle) {
    return Double.parseDouble(circle.getAttribute("r"));
  }

  /** All pins of a plug share one scale, the share of time is a share of the width. */
  @Property(tries = 200)
  void loadsAreDrawnToOneScale(
      @ForAll @DoubleRange(min = 0, max = 60) double currentA,
      @ForAll @DoubleRange(min = 0.01, max = 1) double duty,
      @ForAll boolean narrow) {
    List<LoadProfile> loads =
        List.of(
            new LoadProfile("1 first pin", "60 A", 60, OptionalDouble.empty(), "", 1),
            new LoadProfile(
                "2 a pin with a rather long name of its own",
                "peak; a fuse of its own; at least 10.5 V; on now and then",
                currentA,
                OptionalDouble.of(70),
                "500 ms",
                duty));
    Looked rows =
        Looked.at(LoadProfiles.svg("loads", loads, narrow ? 82 : 150, Lettering.fitted()));
    rows.isSound();
    Box first = Looked.box(rows.elements("rect", "level").get(0));
    Box second = Looked.box(rows.elements("rect", "level").get(1));
    assertThat(second.height()).isCloseTo(first.height() * currentA / 60, within(0.03));
    assertThat(second.width()).isCloseTo(first.width() * duty, within(0.03));
  }
}
