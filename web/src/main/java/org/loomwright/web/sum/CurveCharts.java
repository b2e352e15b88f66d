package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.CurveChart;
import org.loomwright.drawing.chart.CurvePlot;
import org.loomwright.drawing.chart.CurvePlot.Axis;
import org.loomwright.drawing.chart.CurvePlot.Curve;
import org.loomwright.drawing.chart.CurvePlot.Dot;
import org.loomwright.drawing.chart.CurvePlot.Here;
import org.loomwright.drawing.chart.CurvePlot.Limit;
import org.loomwright.drawing.chart.CurvePlot.Point;
import org.loomwright.model.quantity.Display;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.protection.Withstand;
import org.loomwright.physics.sizing.GaugeChoice;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Drop;
import org.loomwright.physics.wire.Resistance;
import org.loomwright.web.units.UnitWords;
import org.loomwright.web.view.Amounts;

/** Sums as curves, the point that was typed marked in each. */
final class CurveCharts {
  private static final int POINTS = 40;
  private static final double COLD_C = -40;
  private static final double WARM_C = 120;
  private static final double BEYOND = 1.6;
  private static final double M_PER_INCH = 0.0254;

  /** Usual limits, drawn for comparison only (common practice). */
  private static final double USUAL_DROP_PERCENT = 3;

  private static final double USUAL_RATING_C = 105;

  private CurveCharts() {}

  static SumChart resistance(
      Conductor wire, double lengthM, double temperatureC, Display units) {
    DoubleFunction<Double> milliohm =
        t -> 1000 * Resistance.of(new Resistance.Input(wire, lengthM, t)).resistanceOhm();
    return chart(
        "Resistance over the temperature of the conductor.",
        () ->
            new CurvePlot(
                "resistance over temperature",
                Axis.linear("temperature of the conductor in °C"),
                Axis.fromZero("resistance in mΩ"),
                List.of(
                    new Curve(
                        name(wire, units),
                        points(
                            even(Math.min(COLD_C, temperatureC), Math.max(WARM_C, temperatureC)),
                            milliohm),
                        false)),
                List.of(),
                List.of(),
                here(temperatureC, milliohm.apply(temperatureC), "°C", "mΩ")));
  }

  static SumChart drop(Drop.Input in, Display units) {
    double lengthM = in.lengthM() > 0 ? in.lengthM() : 1;
    double back = in.returnLengthM().orElse(0) / lengthM;
    double shown = units == Display.US ? M_PER_INCH : 1;
    DoubleFunction<Double> percent =
        m ->
            Drop.of(
                    new Drop.Input(
                        in.conductor(),
                        m,
                        in.returnLengthM().isPresent()
                            ? OptionalDouble.of(back * m)
                            : OptionalDouble.empty(),
                        in.currentA(),
                        in.supplyV(),
                        in.temperatureC()))
                .dropPercent();
    return chart(
        "Voltage drop over the length one way"
            + (back > 0 ? "; the way back grows with it." : ".")
            + " The dashed line at 3 % is common practice, not a limit of yours.",
        () ->
            new CurvePlot(
                "voltage drop over length",
                Axis.fromZero(units == Display.US ? "length in inches" : "length in m"),
                Axis.fromZero("drop in % of the supply"),
                List.of(
                    new Curve(
                        name(in.conductor(), units),
                        points(even(0, BEYOND * lengthM), percent).stream()
                            .map(it -> new Point(it.x() / shown, it.y()))
                            .toList(),
                        false)),
                List.of(new Limit("3 %, common practice", USUAL_DROP_PERCENT, false)),
                List.of(),
                Optional.of(
                    new Here(
                        Amounts.of(in.lengthM(), "m", units)
                            + ": "
                            + Amounts.of(percent.apply(in.lengthM()), "%"),
                        new Point(in.lengthM() / shown, percent.apply(in.lengthM()))))));
  }

  static SumChart gauge(GaugeChoice.Input in, GaugeChoice.Result result, Display units) {
    List<Conductor> sizes =
        units == Display.US ? Conductor.awgCatalogue() : Conductor.metricCatalogue();
    Optional<GaugeChoice.Pick> pick = units == Display.US ? result.awg() : result.metric();
    return chart(
        "Voltage drop by size of wire. A full dot holds both the drop and the allowed current, a"
            + " hollow one fails one of them; the smallest that holds is marked.",
        () -> {
          List<Dot> dots = new ArrayList<>();
          for (Conductor size : sizes) {
            double percent = dropPercent(size, in);
            boolean holds =
                GaugeChoice.check(size, in).checks().stream()
                    .noneMatch(it -> it.verdict() == Verdict.FAILS);
            dots.add(
                new Dot(
                    size.label().replace(" mm²", ""), new Point(size.areaMm2(), percent), holds));
          }
          return new CurvePlot(
              "voltage drop by size of wire",
              Axis.decades("copper area in mm²"),
              Axis.decades("drop in % of the supply"),
              List.of(),
              List.of(
                  new Limit(
                      "at most " + Amounts.of(in.maxDropPercent(), "%"),
                      in.maxDropPercent(),
                      false)),
              dots,
              pick.map(
                  it ->
                      new Here(
                          it.conductor().label()
                              + ": "
                              + Amounts.of(dropPercent(it.conductor(), in), "%"),
                          new Point(it.conductor().areaMm2(), dropPercent(it.conductor(), in)))));
        });
  }

  private static double dropPercent(Conductor size, GaugeChoice.Input in) {
    return Drop.of(
            new Drop.Input(
                size,
                in.oneWayLengthM(),
                OptionalDouble.empty(),
                in.currentA(),
                in.supplyV(),
                in.insulationRatingC()))
        .dropPercent();
  }

  static SumChart ampacity(Conductor wire, double ratingC, double ambientC) {
    DoubleFunction<Ampacity.Result> at =
        t -> Ampacity.of(Ampacity.Input.single(wire, ratingC, t));
    double lowC = Math.min(COLD_C, ambientC);
    return chart(
        "Allowed current over the temperature of the air around; nothing is allowed where the air"
            + " is as warm as the insulation may be. The lower of the curves counts.",
        () -> {
          List<Point> heat = new ArrayList<>();
          List<Point> table = new ArrayList<>();
          for (double t : even(lowC, Math.max(ratingC - 1, ambientC))) {
            Ampacity.Result it = at.apply(t);
            heat.add(new Point(t, it.heatBalanceA()));
            it.handbookA().ifPresent(a -> table.add(new Point(t, a)));
          }
          List<Curve> curves = new ArrayList<>();
          curves.add(new Curve("by heat balance", heat, false));
          if (table.size() > 1) {
            curves.add(new Curve("by handbook", table, true));
          }
          return new CurvePlot(
              "allowed current over the air around",
              Axis.linear("air around in °C"),
              Axis.fromZero("allowed current in A"),
              curves,
              List.of(new Limit("rating " + Amounts.of(ratingC, "°C"), ratingC, true)),
              List.of(),
              here(ambientC, at.apply(ambientC).allowedA(), "°C", "A"));
        });
  }

  static SumChart temperature(
      Conductor wire, double ambientC, WireHeat.Result typed, Display units) {
    return chart(
        "Temperature of the conductor over current. The dashed line at 105 °C is the rating of"
            + " usual insulation, for comparison.",
        () -> {
          List<Point> points = new ArrayList<>();
          WireHeat.Lying lying = WireHeat.Lying.single(wire, ambientC);
          for (double a : even(0, BEYOND * Math.max(1, typed.currentA()))) {
            double conductorC = orMelts(lying, a);
            // Beyond the typed point the copper may melt; the curve ends there.
            if (Double.isNaN(conductorC)) {
              break;
            }
            points.add(new Point(a, conductorC));
          }
          return new CurvePlot(
              "temperature of the conductor over current",
              Axis.fromZero("current in A"),
              Axis.linear("conductor in °C"),
              List.of(new Curve(name(wire, units), points, false)),
              List.of(
                  new Limit("air around", ambientC, false),
                  new Limit("105 °C, usual insulation", USUAL_RATING_C, false)),
              List.of(),
              here(typed.currentA(), typed.conductorC(), "A", "°C"));
        });
  }

  private static double orMelts(WireHeat.Lying lying, double currentA) {
    try {
      return WireHeat.temperature(lying, currentA).conductorC();
    } catch (SumException melts) {
      return Double.NaN;
    }
  }

  static SumChart withstand(Withstand.Input in, Display units) {
    DoubleFunction<Double> current =
        s ->
            Withstand.of(
                    new Withstand.Input(in.conductor(), in.insulation(), in.initialC(), s))
                .currentA();
    double shortestS = Math.min(0.01, in.timeS());
    return chart(
        "Current the wire survives over time; above the curve its insulation is damaged. The sum"
            + " holds up to 5 s.",
        () ->
            new CurvePlot(
                "current survived over time",
                Axis.decades("time in s"),
                Axis.decades("current in A"),
                List.of(
                    new Curve(
                        name(in.conductor(), units) + ", " + in.insulation().label(),
                        points(decades(shortestS, Withstand.LONGEST_S), current),
                        false)),
                List.of(new Limit("5 s", Withstand.LONGEST_S, true)),
                List.of(),
                here(in.timeS(), current.apply(in.timeS()), "s", "A")));
  }

  private static String name(Conductor wire, Display units) {
    return new UnitWords(units, List.of()).of(wire.label());
  }

  private static SumChart chart(String caption, java.util.function.Supplier<CurvePlot> maker) {
    return SumChart.orWhyNot(
        () -> {
          CurvePlot plot = maker.get();
          return SumChart.of(caption, width -> CurveChart.svg(plot, width, Lettering.fitted()));
        });
  }

  private static Optional<Here> here(double x, double y, String across, String up) {
    return Optional.of(
        new Here(Amounts.of(x, across) + ": " + Amounts.of(y, up), new Point(x, y)));
  }

  private static List<Point> points(List<Double> across, DoubleFunction<Double> up) {
    return across.stream().map(x -> new Point(x, up.apply(x))).toList();
  }

  private static List<Double> even(double from, double to) {
    return IntStream.rangeClosed(0, POINTS)
        .mapToObj(i -> from + (to - from) * i / POINTS)
        .toList();
  }

  private static List<Double> decades(double from, double to) {
    return even(Math.log(from), Math.log(to)).stream()
        .map(it -> Math.min(to, Math.max(from, Math.exp(it))))
        .toList();
  }
}
