package org.loomwright.physics.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.LoadingLimit;
import org.loomwright.physics.protection.Withstand;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;
import org.loomwright.physics.wire.Drop;

/** The single checks of a fuse with the wire behind it. */
final class FuseChecks {
  private final FuseRequest request;
  private final Trace.Builder trace;

  FuseChecks(FuseRequest request, Trace.Builder trace) {
    this.request = request;
    this.trace = trace;
  }

  /** Steady load over rating. */
  static Check loading(FuseRequest request, Fuse fuse) {
    LoadingLimit limit = request.limits().loading();
    return Check.atMost(
        "loading",
        request.continuousA() / fuse.ratingA(),
        limit.share(),
        "of the rating",
        "steady load at most " + Require.text(100 * limit.share()) + " % of the " + fuse.label(),
        limit.source());
  }

  /** The starting current must be over before the fuse can open. */
  static Check peak(FuseRequest request, Fuse fuse) {
    // A peak without current or without duration asks nothing of the fuse.
    boolean none = request.peakTimeS() == 0 || request.peakA() == 0;
    return Check.atMost(
        "peak",
        none ? 0 : request.peakTimeS(),
        fuse.shortestOpeningS(none ? 0 : request.peakA()),
        "s",
        Require.text(request.peakA())
            + " A must end before the earliest opening of the "
            + fuse.label(),
        "ISO 8820-3 opening-time limits");
  }

  /** The wire where it lies, in its bundle, at steady load. */
  Check carriesLoad() {
    Ampacity.Result allowed =
        Ampacity.of(
            new Ampacity.Input(
                request.conductor(),
                request.insulationRatingC(),
                request.ambientC(),
                request.wires(),
                request.loadedShare()));
    trace.addAll(allowed.trace());
    return Check.atMost(
        "conductor carries the load",
        request.continuousA(),
        allowed.allowedA(),
        "A",
        "steady load at most the allowed current of " + request.conductor().label(),
        "smaller of 33 CFR 183.425 Table 5 and heat balance");
  }

  /**
   * The wire at the largest current the fuse may let pass for long. An overload that does not open
   * the fuse is a fault of one lead; the others of the bundle stay at or below their load. So the
   * allowed current of the wire alone counts here; the bundle counts in {@link #carriesLoad} and
   * {@link #carriesFuseInBundle}.
   */
  Check carriesFuse(Fuse fuse) {
    Ampacity.Result allowed =
        Ampacity.of(
            Ampacity.Input.single(
                request.conductor(), request.insulationRatingC(), request.ambientC()));
    if (request.wires() > 1) {
      trace.addAll(allowed.trace());
    }
    double factor = request.limits().carryFactor();
    return Check.atLeast(
        "conductor carries the fuse",
        allowed.allowedA(),
        factor * fuse.ratingA(),
        "A",
        "allowed current of "
            + request.conductor().label()
            + " at least "
            + Require.text(100 * factor)
            + " % of the "
            + fuse.label(),
        FuseLimits.CARRY_SOURCE);
  }

  /**
   * The wire in its bundle, the others at their load, while this lead carries for good what the
   * fuse does not open at. Rises are added: that of the loaded bundle, and what the overload adds
   * to the wire alone. Adding is cautious, since a hotter surface gives off heat more readily. A
   * bundle of one needs no such check.
   */
  Optional<Check> carriesFuseInBundle(Fuse fuse) {
    if (request.wires() == 1) {
      return Optional.empty();
    }
    Conductor c = request.conductor();
    WireHeat.Lying alone = WireHeat.Lying.single(c, request.ambientC());
    WireHeat.Lying bundle =
        new WireHeat.Lying(c, request.ambientC(), request.wires(), request.loadedShare());
    double overloadA = Math.max(fuse.holdingA(), request.continuousA());
    double bundleC = hottestC(bundle, request.continuousA());
    double addedK = hottestC(alone, overloadA) - hottestC(alone, request.continuousA());
    double riseK = bundleC - request.ambientC() + addedK;
    trace
        .line("conductor in the loaded bundle", "heat balance", bundleC, "°C", "heat balance")
        .line(
            "added by the overload of this lead",
            "T(" + Require.text(overloadA) + " A) - T(steady load), wire alone",
            addedK,
            "K",
            "heat balance")
        .line(
            "rise above ambient",
            "conductor in the loaded bundle - ambient + added by the overload of this lead",
            riseK,
            "K",
            "superposition, cautious");
    return Optional.of(
        Check.atMost(
            "conductor carries the fuse in its bundle",
            riseK,
            Math.max(0, request.insulationRatingC() - request.ambientC()),
            "K",
            "rise above ambient at "
                + Require.text(overloadA)
                + " A, which the "
                + fuse.label()
                + " carries for good, at most up to the insulation rating",
            "heat balance; ISO 8820-3 opening-time limits"));
  }

  /** Conductor temperature; the melting point where there is no steady one below it. */
  private static double hottestC(WireHeat.Lying lying, double currentA) {
    return WireHeat.current(lying, Copper.MELTING_C).currentA() <= currentA
        ? Copper.MELTING_C
        : WireHeat.temperature(lying, currentA).conductorC();
  }

  /** Drop there and back with the conductor at its highest temperature. */
  Check drop() {
    Drop.Result drop =
        Drop.of(
            new Drop.Input(
                request.conductor(),
                request.oneWayLengthM(),
                OptionalDouble.of(request.returnLengthM()),
                request.continuousA(),
                request.supplyV(),
                request.insulationRatingC()));
    trace.addAll(drop.trace());
    double limit = request.limits().maxDropPercent();
    return Check.atMost(
        "voltage drop",
        drop.dropPercent(),
        limit,
        "%",
        "drop there and back at most " + Require.text(limit) + " % of the supply",
        FuseLimits.DROP_SOURCE);
  }

  /** The smallest short-circuit current, at the far end with the wire hot, must open the fuse. */
  Check endOfLineFault(Fuse fuse) {
    double faultA = smallestFaultA();
    double limitS = request.limits().openingTimeS();
    double neededA = fuse.currentOpeningWithinA(limitS).orElse(Double.POSITIVE_INFINITY);
    trace
        .line(
            "resistance of the source",
            "assumed",
            request.limits().sourceOhm(),
            "ohm",
            FuseLimits.SOURCE_OHM_SOURCE)
        .line(
            "fault current at the end of the line",
            "supply / (source + r(T) * (L + Lreturn))",
            faultA,
            "A",
            "Ohm's law, conductor at " + Require.text(request.insulationRatingC()) + " °C");
    return Check.atLeast(
        "end-of-line fault",
        faultA,
        neededA,
        "A",
        "a short at the far end must open the "
            + fuse.label()
            + " within "
            + Require.text(limitS)
            + " s",
        "ISO 8820-3 opening-time limits");
  }

  /**
   * The fuse must not let through more than the conductor withstands, at every fault current from
   * the far end (wire hot) to the fuse itself (source alone). The conductor starts at its rating.
   */
  Check withstand(Fuse fuse) {
    Conductor c = request.conductor();
    Withstand.Result withstand =
        Withstand.of(
            new Withstand.Input(
                c,
                request.insulation(),
                OptionalDouble.of(request.insulationRatingC()),
                Withstand.LONGEST_S));
    double largestA = request.supplyV() / request.limits().sourceOhm();
    // Currents too small to open the fuse in time are the end-of-line check's business.
    double fromA =
        Math.max(
            smallestFaultA(),
            fuse.currentOpeningWithinA(request.limits().openingTimeS()).orElse(largestA));
    double letThrough = fuse.largestLetThroughA2s(fromA, Math.max(fromA, largestA));
    trace
        .addAll(withstand.trace())
        .line(
            "most energy the fuse lets through",
            "largest I² t between far-end fault and fault at the fuse",
            letThrough,
            "A²s",
            "ISO 8820-3 opening-time limits; beyond the last one constant I²t (common practice)");
    return Check.atMost(
        "short-circuit withstand",
        letThrough,
        withstand.i2tA2s(),
        "A²s",
        "let-through of the " + fuse.label() + " at most k²S² of " + c.label(),
        Withstand.SOURCE);
  }

  private double smallestFaultA() {
    double loopOhm =
        request.conductor().resistanceOhmPerM(request.insulationRatingC())
            * (request.oneWayLengthM() + request.returnLengthM());
    return request.supplyV() / (request.limits().sourceOhm() + loopOhm);
  }
}
