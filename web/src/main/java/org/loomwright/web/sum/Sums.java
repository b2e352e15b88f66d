package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loomwright.physics.TraceLine;
import org.loomwright.physics.cutting.CuttingStock;
import org.loomwright.physics.cutting.Piece;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.protection.Withstand;
import org.loomwright.physics.sizing.FuseChoice;
import org.loomwright.physics.sizing.FuseRequest;
import org.loomwright.physics.sizing.GaugeChoice;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Drop;
import org.loomwright.physics.wire.Resistance;
import org.loomwright.web.sum.SumResult.Figure;
import org.loomwright.web.view.Amounts;

/** From what was typed to the sums; empty when a field is wrong. */
final class Sums {
  /** Lengths to cut count in whole tenths of a mm; less than this of one is rounding. */
  private static final double ROUNDING = 1e-6;

  private Sums() {}

  static Optional<SumResult> resistance(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Double> length = typed.metres("length");
    Optional<Double> temperature = typed.celsius("temperature");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    Resistance.Result it =
        Resistance.of(
            new Resistance.Input(
                wire.orElseThrow(), length.orElseThrow(), temperature.orElseThrow()));
    return answer(
        it.trace().lines(),
        CurveCharts.resistance(wire.orElseThrow(), length.orElseThrow(), temperature.orElseThrow(), typed.units()),
        figure("resistance", 1000 * it.resistanceOhm(), "mΩ"));
  }

  static Optional<SumResult> drop(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Double> length = typed.metres("length");
    Optional<Double> back =
        typed.isEmpty("return-length") ? Optional.empty() : typed.metres("return-length");
    Optional<Double> current = typed.amperes("current");
    Optional<Double> supply = typed.volts("supply");
    Optional<Double> temperature = typed.celsius("temperature");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    Drop.Input in =
        new Drop.Input(
            wire.orElseThrow(),
            length.orElseThrow(),
            back.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
            current.orElseThrow(),
            supply.orElseThrow(),
            temperature.orElseThrow());
    Drop.Result it = Drop.of(in);
    return answer(
        it.trace().lines(),
        CurveCharts.drop(in, typed.units()),
        figure("drop", it.dropV(), "V"),
        figure("of the supply", it.dropPercent(), "%"));
  }

  static Optional<SumResult> gauge(Typed typed) {
    Optional<Double> current = typed.amperes("current");
    Optional<Double> length = typed.metres("length");
    Optional<Double> supply = typed.volts("supply");
    Optional<Double> drop = typed.percent("max-drop");
    Optional<Double> ambient = typed.celsius("ambient");
    Optional<Double> rating = typed.celsius("insulation-rating");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    GaugeChoice.Input in =
        GaugeChoice.Input.single(
            current.orElseThrow(),
            length.orElseThrow(),
            supply.orElseThrow(),
            drop.orElseThrow(),
            ambient.orElseThrow(),
            rating.orElseThrow());
    GaugeChoice.Result it = GaugeChoice.of(in);
    List<TraceLine> trace = new ArrayList<>();
    Stream.of(it.metric(), it.awg())
        .flatMap(Optional::stream)
        .forEach(pick -> trace.addAll(pick.trace().lines()));
    String none = "none: even the largest size drops or heats too much";
    return answer(
        trace,
        CurveCharts.gauge(in, it, typed.units()),
        new Figure(
            "metric",
            it.areaMm2().isPresent() ? Amounts.of(it.areaMm2().getAsDouble(), "mm²") : none),
        new Figure("gauge", it.awgLabel().orElse(none)));
  }

  static Optional<SumResult> ampacity(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Double> rating = typed.celsius("insulation-rating");
    Optional<Double> ambient = typed.celsius("ambient");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    Ampacity.Result it =
        Ampacity.of(
            new Ampacity.Input(
                wire.orElseThrow(),
                rating.orElseThrow(),
                ambient.orElseThrow(),
                1,
                OptionalDouble.empty()));
    return answer(
        it.trace().lines(),
        CurveCharts.ampacity(wire.orElseThrow(), rating.orElseThrow(), ambient.orElseThrow()),
        new Figure(
            "by handbook",
            it.handbookA().isPresent()
                ? Amounts.of(it.handbookA().getAsDouble(), "A")
                : "none: " + it.whyNoHandbook().orElse("no table holds it")),
        figure("by heat balance", it.heatBalanceA(), "A"),
        figure("allowed", it.allowedA(), "A"));
  }

  static Optional<SumResult> temperature(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Double> current = typed.amperes("current");
    Optional<Double> ambient = typed.celsius("ambient");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    WireHeat.Result it =
        WireHeat.temperature(
            WireHeat.Lying.single(wire.orElseThrow(), ambient.orElseThrow()),
            current.orElseThrow());
    return answer(
        it.trace().lines(),
        CurveCharts.temperature(wire.orElseThrow(), ambient.orElseThrow(), it, typed.units()),
        figure("conductor", it.conductorC(), "°C"));
  }

  static Optional<SumResult> withstand(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Insulation> insulation = typed.insulation("insulation");
    Optional<Double> time = typed.seconds("time");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    Withstand.Input in =
        new Withstand.Input(
            wire.orElseThrow(), insulation.orElseThrow(), OptionalDouble.empty(), time.orElseThrow());
    Withstand.Result it = Withstand.of(in);
    return answer(
        it.trace().lines(), CurveCharts.withstand(in, typed.units()), figure("current", it.currentA(), "A"));
  }

  static Optional<SumResult> fuse(Typed typed) {
    Optional<Double> continuous = typed.amperes("continuous");
    Optional<Double> peak = typed.amperes("peak");
    Optional<Double> peakTime = typed.seconds("peak-time");
    Optional<Conductor> wire = typed.wire();
    Optional<Double> length = typed.metres("length");
    Optional<Double> ambient = typed.celsius("ambient");
    Optional<Double> supply = typed.volts("supply");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    FuseRequest request =
        FuseRequest.of(
            continuous.orElseThrow(),
            peak.orElseThrow(),
            peakTime.orElseThrow(),
            wire.orElseThrow(),
            length.orElseThrow(),
            ambient.orElseThrow(),
            supply.orElseThrow());
    FuseChoice.Result it = FuseChoice.of(request);
    Figure fuse =
        new Figure(
            "fuse",
            it.fuse()
                .map(found -> found.label())
                .orElse("none: no standard fuse carries the load and its start"));
    return Optional.of(
        new SumResult(
            List.of(fuse),
            it.checks(),
            it.trace().lines(),
            it.fuse().map(found -> ShapeCharts.fuse(request, found, typed.units())),
            java.util.Map.of()));
  }

  static Optional<SumResult> bundle(Typed typed) {
    return typed
        .lengthsMm("diameters")
        .flatMap(
            diameters -> {
              BundleSize.Result it = BundleSize.of(new BundleSize.Input(diameters));
              return answer(
                  it.trace().lines(),
                  ShapeCharts.bundle(it, typed.units()),
                  new Figure(
                      "bundle diameter", Amounts.of(it.diameterMm(), "mm", typed.units())));
            });
  }

  static Optional<SumResult> cut(Typed typed) {
    Optional<Double> stock = typed.millimetres("stock");
    Optional<List<Piece>> pieces = typed.pieces("pieces");
    Optional<Double> kerf =
        typed.isEmpty("kerf") ? Optional.of(0.0) : typed.millimetres("kerf");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    CuttingStock.Input in =
        new CuttingStock.Input(
            Math.floor(10 * stock.orElseThrow() + ROUNDING) / 10,
            pieces.orElseThrow(),
            Math.ceil(10 * kerf.orElseThrow() - ROUNDING) / 10);
    CuttingStock.Result it = CuttingStock.of(in);
    List<TraceLine> trace = new ArrayList<>(it.trace().lines());
    return answer(
        trace,
        ShapeCharts.cut(in, it, typed.units()),
        new Figure("spools or bars", Integer.toString(it.stockUsed())),
        new Figure("proven", "no way needs fewer than " + it.lowerBound()),
        figure("waste", it.wastePercent(), "%"));
  }

  private static Figure figure(String what, double value, String unit) {
    return new Figure(what, Amounts.of(value, unit));
  }

  private static Optional<SumResult> answer(
      List<TraceLine> trace, SumChart chart, Figure... figures) {
    return Optional.of(SumResult.of(trace, chart, figures));
  }
}
