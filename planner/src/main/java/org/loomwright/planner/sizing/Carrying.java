package org.loomwright.planner.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.heat.Phase;
import org.loomwright.physics.heat.ThermalMass;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.heat.WireTransient;
import org.loomwright.physics.sizing.LeastSection;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/** What a wire carries for good and for the time of its peak, whatever the opening of its fuse. */
final class Carrying {
  /** Name of the check of a wire against the table of fuse and smallest section. */
  static final String SECTION = "section for the fuse";

  private static final String LOADED = "conductor in the loaded bundle";
  private static final String ALONE = "conductor of the wire alone at its load";

  private final Wire wire;
  private final WireNeed need;
  private final Rules rules;
  private final Conductor conductor;
  private final boolean shown;
  private final Trace.Builder trace = Trace.builder();
  private final Map<Steady, Double> steady = new HashMap<>();

  private record Steady(WireHeat.Lying lying, double currentA) {}

  /**
   * @param shown whether the trace is wanted in full; without, only the figures are found
   */
  Carrying(Wire wire, WireNeed need, Rules rules, boolean shown) {
    this.shown = shown;
    this.wire = wire;
    this.need = need;
    this.rules = rules;
    this.conductor = Conductors.of(wire);
  }

  List<Check> checks() {
    if (!need.isFused()) {
      return List.of(load());
    }
    List<Check> checks = new ArrayList<>();
    section().ifPresent(checks::add);
    checks.add(load());
    checks.add(fuse());
    if (need.load().hasPeak()) {
      checks.add(afterPeak());
    }
    return checks;
  }

  /** How the figures were reached; complete once the checks were made. */
  Trace trace() {
    return trace.build();
  }

  private Optional<Check> section() {
    OptionalDouble least = LeastSection.areaMm2(need.fuse().ratingA());
    least.ifPresent(
        it ->
            trace.line(
                "smallest section behind the fuse", "table", it, "mm²", LeastSection.SOURCE));
    return least.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Check.atLeast(
                SECTION,
                wire.size().areaMm2(),
                least.getAsDouble(),
                "mm²",
                "smallest section behind the " + need.fuse().label(),
                LeastSection.SOURCE));
  }

  /** The wire where it lies, in its bundle, at steady load. */
  private Check load() {
    Ampacity.Result allowed =
        Ampacity.of(
            new Ampacity.Input(
                conductor, ratingC(), need.ambientC(), need.wires(), OptionalDouble.empty()));
    trace.given("steady load", need.load().continuousA(), "A").addAll(allowed.trace());
    return Check.atMost(
        "conductor carries the load",
        need.load().continuousA(),
        allowed.allowedA(),
        "A",
        "steady load at most the allowed current of " + conductor.label(),
        "smaller of 33 CFR 183.425 Table 5 and heat balance");
  }

  /**
   * The wire at the shop's multiple of the fuse. An overload that does not open the fuse is a fault
   * of one lead; the others of the bundle stay at or below their load. So the allowed current of
   * the wire alone counts here; in its bundle it is judged with the whole kit.
   */
  private Check fuse() {
    Ampacity.Result allowed =
        Ampacity.of(Ampacity.Input.single(conductor, ratingC(), need.ambientC()));
    if (need.wires() > 1) {
      trace.addAll(allowed.trace());
    }
    double factor = rules.wireOverFuse().value().fraction();
    trace.line(
        "current asked of the wire",
        "factor * rating of the fuse, factor = " + Require.text(factor),
        factor * need.fuse().ratingA(),
        "A",
        rules.wireOverFuse().source());
    return Check.atLeast(
        "conductor carries the fuse",
        allowed.allowedA(),
        factor * need.fuse().ratingA(),
        "A",
        "allowed current of "
            + conductor.label()
            + " at least "
            + Require.text(100 * factor)
            + " % of the "
            + need.fuse().label(),
        rules.wireOverFuse().source());
  }

  /**
   * The wire at the end of its peak. It starts at the steady temperature of its loaded bundle; what
   * the bundle adds to the wire alone is taken as warmer air round it, and copper alone stores
   * heat: both cautious.
   */
  private Check afterPeak() {
    double startC = loadedC();
    double endC = startC;
    if (startC < ratingC()) {
      double aloneC = steadyC(alone(), need.load().continuousA());
      double airC = need.ambientC() + Math.max(0, startC - aloneC);
      showSteady(LOADED, bundled(), need.load().continuousA());
      showSteady(ALONE, alone(), need.load().continuousA());
      trace.line(
          "air round the wire, as warm as the bundle makes it",
          "ambient + " + LOADED + " - " + ALONE,
          airC,
          "°C",
          "cautious");
      WireTransient heat =
          WireTransient.of(
              WireHeat.Lying.single(conductor, airC), ThermalMass.copperOnly(conductor));
      Phase peak = new Phase(need.load().peakA(), need.load().peakTimeS());
      boolean melts =
          heat.timeToReachS(startC, Copper.MELTING_C, peak.currentA()).orElse(Double.MAX_VALUE)
              <= peak.durationS();
      if (melts) {
        endC = Copper.MELTING_C;
      } else {
        WireTransient.Course course = heat.course(startC, List.of(peak));
        trace.addAll(course.trace());
        endC = course.hottestC();
        showLossless(startC, peak);
      }
    }
    trace
        .line(
            "conductor after the peak",
            endC == Copper.MELTING_C ? "melting point of copper" : "highest temperature",
            endC,
            "°C",
            "heat balance; IEC 60949")
        .line(
            "rise after the peak",
            "conductor after the peak - ambient",
            endC - need.ambientC(),
            "K",
            "definition");
    showRoom();
    return Check.atMost(
        "conductor after the peak",
        endC - need.ambientC(),
        roomK(),
        "K",
        "rise above ambient after "
            + Require.text(need.load().peakTimeS())
            + " s at "
            + Require.text(need.load().peakA())
            + " A, from the steady load on, at most up to the insulation rating",
        "heat balance with the copper as heat store, IEC 60949");
  }

  /** The conductor in its bundle at steady load; a bundle never cools. */
  private double loadedC() {
    double aloneC = steadyC(alone(), need.load().continuousA());
    return need.wires() == 1
        ? aloneC
        : Math.max(aloneC, steadyC(bundled(), need.load().continuousA()));
  }

  private WireHeat.Lying bundled() {
    return new WireHeat.Lying(conductor, need.ambientC(), need.wires(), OptionalDouble.empty());
  }

  private void showSteady(String what, WireHeat.Lying lying, double currentA) {
    if (!shown) {
      return;
    }
    boolean melts = melts(lying, currentA);
    if (!melts) {
      trace.addAll(WireHeat.temperature(lying, currentA).trace());
    }
    double conductorC = steadyC(lying, currentA);
    trace.line(
        what,
        melts ? "melting point of copper, no balance below it" : "conductor temperature",
        what.equals(LOADED) ? loadedC() : conductorC,
        "°C",
        "heat balance");
  }

  /** What the conductor comes to if all heat of the peak stays in it: above what it comes to. */
  private void showLossless(double startC, Phase peak) {
    double perKelvin = conductor.ohmPerM20C() / (Copper.ZERO_RESISTANCE_C + 20);
    double share =
        peak.currentA()
            * peak.currentA()
            * perKelvin
            * peak.durationS()
            / ThermalMass.copperOnly(conductor).totalJPerMK();
    trace.line(
        "conductor after the peak if no heat left it, at most",
        "(234.5 + temperature at the start) e^(I² r20 t / (254.5 * heat stored per kelvin)) -"
            + " 234.5, e = 2.718281828, I = "
            + Require.text(peak.currentA())
            + " A, r20 = "
            + Require.text(conductor.ohmPerM20C())
            + " ohm/m, t = "
            + Require.text(peak.durationS())
            + " s",
        (Copper.ZERO_RESISTANCE_C + startC) * Math.exp(share) - Copper.ZERO_RESISTANCE_C,
        "°C",
        "IEC 60949");
  }

  private void showRoom() {
    trace.line(
        "rise up to the rating",
        ratingC() > need.ambientC() ? "insulation rating - ambient" : "none, the air is warmer",
        roomK(),
        "K",
        "definition");
  }

  private WireHeat.Lying alone() {
    return WireHeat.Lying.single(conductor, need.ambientC());
  }

  /** Conductor temperature; the melting point where there is no steady one below it. */
  private double steadyC(WireHeat.Lying lying, double currentA) {
    return steady.computeIfAbsent(
        new Steady(lying, currentA),
        asked ->
            melts(lying, currentA)
                ? Copper.MELTING_C
                : WireHeat.temperature(lying, currentA).conductorC());
  }

  private static boolean melts(WireHeat.Lying lying, double currentA) {
    return WireHeat.current(lying, Copper.MELTING_C).currentA() <= currentA;
  }

  private double roomK() {
    return Math.max(0, ratingC() - need.ambientC());
  }

  private double ratingC() {
    return wire.rating().celsius();
  }
}
