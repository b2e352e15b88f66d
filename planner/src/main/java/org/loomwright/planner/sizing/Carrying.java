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
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.sizing.LeastSection;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/** What a wire carries for good and for the time of its peak, whatever the opening of its fuse. */
final class Carrying {
  /** Name of the check of a wire against the table of fuse and smallest section. */
  static final String SECTION = "section for the fuse";

  private final Wire wire;
  private final WireNeed need;
  private final Rules rules;
  private final Conductor conductor;
  private final Trace.Builder trace = Trace.builder();
  private final Map<Steady, Double> steady = new HashMap<>();

  private record Steady(WireHeat.Lying lying, double currentA) {}

  Carrying(Wire wire, WireNeed need, Rules rules) {
    this.wire = wire;
    this.need = need;
    this.rules = rules;
    this.conductor = Conductors.of(wire);
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    section().ifPresent(checks::add);
    checks.add(load());
    checks.add(fuse());
    if (need.wires() > 1) {
      checks.add(fuseInBundle());
    }
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
    trace.addAll(allowed.trace());
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
   * the wire alone counts here; the bundle counts in the other checks.
   */
  private Check fuse() {
    Ampacity.Result allowed =
        Ampacity.of(Ampacity.Input.single(conductor, ratingC(), need.ambientC()));
    if (need.wires() > 1) {
      trace.addAll(allowed.trace());
    }
    double factor = rules.wireOverFuse().value().fraction();
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
   * The wire in its bundle, the others at their load, while this lead carries for good what the
   * fuse does not open at. Rises are added: that of the loaded bundle, and what the overload adds
   * to the wire alone. Adding is cautious, since a hotter surface gives off heat more readily.
   */
  private Check fuseInBundle() {
    double holdingA =
        need.fuses().stream().map(FuseBefore::fuse).mapToDouble(Fuse::holdingA).max().orElse(0);
    double overloadA = Math.max(holdingA, need.load().continuousA());
    double addedK = steadyC(alone(), overloadA) - steadyC(alone(), need.load().continuousA());
    double riseK = loadedC() - need.ambientC() + addedK;
    trace
        .line("conductor in the loaded bundle", "heat balance", loadedC(), "°C", "heat balance")
        .line(
            "added by the overload of this lead",
            "T(" + Require.text(overloadA) + " A) - T(steady load), wire alone",
            addedK,
            "K",
            "heat balance")
        .line("rise above ambient", "sum of rises", riseK, "K", "superposition, cautious");
    return Check.atMost(
        "conductor carries the fuse in its bundle",
        riseK,
        roomK(),
        "K",
        "rise above ambient at "
            + Require.text(overloadA)
            + " A, which the fuse carries for good, at most up to the insulation rating",
        "heat balance; ISO 8820 opening-time limits");
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
      double airC =
          need.ambientC() + Math.max(0, startC - steadyC(alone(), need.load().continuousA()));
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
      }
    }
    trace.line(
        "conductor after the peak",
        "heat balance over time",
        endC,
        "°C",
        "heat balance; IEC 60949");
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
        : Math.max(
            aloneC,
            steadyC(
                new WireHeat.Lying(
                    conductor, need.ambientC(), need.wires(), OptionalDouble.empty()),
                need.load().continuousA()));
  }

  private WireHeat.Lying alone() {
    return WireHeat.Lying.single(conductor, need.ambientC());
  }

  /** Conductor temperature; the melting point where there is no steady one below it. */
  private double steadyC(WireHeat.Lying lying, double currentA) {
    return steady.computeIfAbsent(
        new Steady(lying, currentA),
        asked ->
            WireHeat.current(lying, Copper.MELTING_C).currentA() <= currentA
                ? Copper.MELTING_C
                : WireHeat.temperature(lying, currentA).conductorC());
  }

  private double roomK() {
    return Math.max(0, ratingC() - need.ambientC());
  }

  private double ratingC() {
    return wire.rating().celsius();
  }
}
