package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loomwright.physics.TraceLine;
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
    return answer(it.trace().lines(), figure("resistance", 1000 * it.resistanceOhm(), "mΩ"));
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
    Drop.Result it =
        Drop.of(
            new Drop.Input(
                wire.orElseThrow(),
                length.orElseThrow(),
                back.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                current.orElseThrow(),
                supply.orElseThrow(),
                temperature.orElseThrow()));
    return answer(
        it.trace().lines(),
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
    GaugeChoice.Result it =
        GaugeChoice.of(
            GaugeChoice.Input.single(
                current.orElseThrow(),
                length.orElseThrow(),
                supply.orElseThrow(),
                drop.orElseThrow(),
                ambient.orElseThrow(),
                rating.orElseThrow()));
    List<TraceLine> trace = new ArrayList<>();
    Stream.of(it.metric(), it.awg())
        .flatMap(Optional::stream)
        .forEach(pick -> trace.addAll(pick.trace().lines()));
    String none = "none: even the largest size drops or heats too much";
    return answer(
        trace,
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
    return answer(it.trace().lines(), figure("conductor", it.conductorC(), "°C"));
  }

  static Optional<SumResult> withstand(Typed typed) {
    Optional<Conductor> wire = typed.wire();
    Optional<Insulation> insulation = typed.insulation("insulation");
    Optional<Double> time = typed.seconds("time");
    if (!typed.errors().isEmpty()) {
      return Optional.empty();
    }
    Withstand.Result it =
        Withstand.of(
            new Withstand.Input(
                wire.orElseThrow(),
                insulation.orElseThrow(),
                OptionalDouble.empty(),
                time.orElseThrow()));
    return answer(it.trace().lines(), figure("current", it.currentA(), "A"));
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
    FuseChoice.Result it =
        FuseChoice.of(
            FuseRequest.of(
                continuous.orElseThrow(),
                peak.orElseThrow(),
                peakTime.orElseThrow(),
                wire.orElseThrow(),
                length.orElseThrow(),
                ambient.orElseThrow(),
                supply.orElseThrow()));
    Figure fuse =
        new Figure(
            "fuse",
            it.fuse()
                .map(found -> found.label())
                .orElse("none: no standard fuse carries the load and its start"));
    return Optional.of(
        new SumResult(List.of(fuse), it.checks(), it.trace().lines(), java.util.Map.of()));
  }

  static Optional<SumResult> bundle(Typed typed) {
    return typed
        .lengthsMm("diameters")
        .flatMap(
            diameters -> {
              BundleSize.Result it = BundleSize.of(new BundleSize.Input(diameters));
              return answer(it.trace().lines(), figure("bundle diameter", it.diameterMm(), "mm"));
            });
  }

  private static Figure figure(String what, double value, String unit) {
    return new Figure(what, Amounts.of(value, unit));
  }

  private static Optional<SumResult> answer(List<TraceLine> trace, Figure... figures) {
    return Optional.of(SumResult.of(trace, figures));
  }
}
