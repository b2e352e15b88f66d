package org.loomwright.physics.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;

/**
 * Does a fuse protect its wire, and does it leave the load alone?
 *
 * <p>Checks, in this order: loading; starting current (if any); wire carries what may never open
 * the fuse; overload; fault at the end of the line; short circuit; breaking capacity; stalled load
 * opens the fuse, and before damage (if any).
 *
 * <p>The latest opening of a fuse is a row of steps, the damage line falls between them; so the
 * worst current of a range is just below a step or at its upper end. Beyond the last step the
 * latest opening falls with 1/I², the damage line now faster, now slower; there 64 currents, even
 * in logs, are looked at.
 */
public final class ProtectionCheck {
  private static final String BAND = "ISO 8820 opening-time limits";
  private static final int TAIL_POINTS = 64;

  private final ProtectionRequest request;
  private final DamageLine line;
  private final FaultCurrents.Result faults;
  private final Trace.Builder trace = Trace.builder();

  private ProtectionCheck(ProtectionRequest request) {
    this.request = request;
    this.line = DamageLine.of(request.wire());
    this.faults = FaultCurrents.of(request.faults());
  }

  /**
   * @param checks see the class comment
   * @param loading the loading limits considered
   * @param trace how the figures were reached
   */
  public record Result(List<Check> checks, LoadingByPlace.Result loading, Trace trace) {
    /** Copies the list. */
    public Result {
      checks = List.copyOf(checks);
    }

    /** The worst verdict of all checks. */
    public Verdict verdict() {
      return Check.worst(checks);
    }
  }

  /** All checks of a request. */
  public static Result of(ProtectionRequest request) {
    return new ProtectionCheck(request).result();
  }

  private Result result() {
    Fuse fuse = request.fuse();
    LoadingByPlace.Result loading =
        LoadingByPlace.of(fuse.family(), request.place(), request.fuseAmbientC());
    trace
        .addAll(loading.trace())
        .addAll(faults.trace())
        .line(
            "current the wire carries for good",
            "heat balance at the insulation rating",
            line.enduranceA(),
            "A",
            DamageLine.SOURCE);
    List<Check> checks = new ArrayList<>();
    checks.add(loading(loading.strictest()));
    request.starting().ifPresent(s -> checks.add(starting(s)));
    checks.add(carriesWhatNeverOpens());
    checks.add(protects("overload", surelyOpensA(), faults.endOfLineA()));
    checks.add(endOfLine());
    checks.add(
        protects(
            "short circuit", Math.max(surelyOpensA(), faults.endOfLineA()), faults.nearSourceA()));
    checks.add(breaking());
    request.stalled().ifPresent(s -> stalled(s, checks));
    return new Result(checks, loading, trace.build());
  }

  /** Smallest current at which the fuse is sure to open at some time, A. */
  private double surelyOpensA() {
    Fuse fuse = request.fuse();
    return fuse.gates().stream()
            .filter(g -> Double.isFinite(g.maxS()))
            .mapToDouble(FuseGate::multiple)
            .min()
            .orElseThrow()
        * fuse.ratingA();
  }

  private Check loading(LoadingLimit limit) {
    Fuse fuse = request.fuse();
    return Check.atMost(
        "loading",
        request.continuousA() / fuse.ratingA(),
        limit.share(),
        "of the rating",
        "steady load at most the strictest limit for the "
            + request.place().label()
            + " at "
            + Require.text(request.fuseAmbientC())
            + " °C: "
            + limit.use(),
        limit.source());
  }

  /** A warm fuse opens as one of a smaller rating. */
  private Check starting(LoadPoint start) {
    Fuse fuse = request.fuse();
    double factor = FuseRerating.factor(fuse.family(), request.fuseAmbientC());
    double opensS = fuse.shortestOpeningS(start.currentA() / factor);
    trace.line(
        "earliest opening of the warm fuse at the starting current",
        "band at I / re-rating",
        opensS,
        "s",
        BAND + "; " + FuseRerating.source(fuse.family()));
    return Check.atMost(
        "starting current",
        start.durationS(),
        opensS,
        "s",
        Require.text(start.currentA())
            + " A must end before the earliest opening of the "
            + fuse.label(),
        BAND);
  }

  private Check carriesWhatNeverOpens() {
    return Check.atLeast(
        "wire carries what may never open the fuse",
        line.enduranceA(),
        surelyOpensA(),
        "A",
        "below "
            + Require.text(surelyOpensA())
            + " A the "
            + request.fuse().label()
            + " may never open",
        BAND + "; heat balance");
  }

  /** Latest opening against damage at the worst current of a range. */
  private Check protects(String name, double fromA, double toA) {
    Fuse fuse = request.fuse();
    double worstA = toA;
    double opensS = toA < fromA ? DamageLine.FOR_GOOD_S : capped(fuse.longestOpeningS(toA));
    double damageS = capped(line.timeS(toA));
    for (ChartPoint latest : latestOpenings(fromA, toA)) {
      double standsS = capped(line.timeS(latest.currentA()));
      if (standsS / latest.timeS() < damageS / opensS) {
        worstA = latest.currentA();
        opensS = latest.timeS();
        damageS = standsS;
      }
    }
    trace
        .line(name + ": worst current", "just below a step of the band", worstA, "A", BAND)
        .line(name + ": fuse is open by then", "latest opening", opensS, "s", BAND)
        .line(name + ": wire is damaged", "damage line", damageS, "s", DamageLine.SOURCE);
    return Check.atMost(
        name,
        opensS,
        damageS,
        "s",
        "the "
            + fuse.label()
            + " opens before "
            + request.wire().lying().conductor().label()
            + " is damaged, worst at "
            + Require.text(Math.round(worstA * 10) / 10.0)
            + " A",
        BAND + "; " + DamageLine.SOURCE);
  }

  /** Latest opening just below every step of a range, and along the tail beyond the last. */
  private List<ChartPoint> latestOpenings(double fromA, double toA) {
    Fuse fuse = request.fuse();
    List<FuseGate> gates = fuse.gates();
    List<ChartPoint> points = new ArrayList<>();
    for (int i = 1; i < gates.size(); i++) {
      double gateA = gates.get(i).multiple() * fuse.ratingA();
      double beforeS = gates.get(i - 1).maxS();
      if (gateA > fromA && gateA <= toA && Double.isFinite(beforeS)) {
        points.add(new ChartPoint(gateA, beforeS));
      }
    }
    double tailA = Math.max(fromA, gates.get(gates.size() - 1).multiple() * fuse.ratingA());
    for (int i = 0; i < TAIL_POINTS && tailA < toA; i++) {
      double currentA = tailA * Math.pow(toA / tailA, (double) i / TAIL_POINTS);
      points.add(new ChartPoint(currentA, fuse.longestOpeningS(currentA)));
    }
    return points;
  }

  private Check endOfLine() {
    return Check.atMost(
        "fault at the end of the line",
        capped(request.fuse().longestOpeningS(faults.endOfLineA())),
        request.openingTimeS(),
        "s",
        "a short circuit at the far end, wire hot and supply low, opens the "
            + request.fuse().label()
            + " in time",
        BAND);
  }

  private Check breaking() {
    return Check.atMost(
        "breaking capacity",
        faults.nearSourceA(),
        request.fuse().family().breakingCapacityA(),
        "A",
        "a short circuit right behind the fuse is within what it can interrupt",
        "ISO 8820 (from memory)");
  }

  private void stalled(LoadPoint stall, List<Check> checks) {
    Fuse fuse = request.fuse();
    checks.add(
        Check.atLeast(
            "stalled load opens the fuse",
            stall.currentA(),
            surelyOpensA(),
            "A",
            "the stalled current must be one at which the " + fuse.label() + " surely opens",
            BAND));
    checks.add(
        Check.atMost(
            "stalled load opens the fuse before damage",
            capped(fuse.longestOpeningS(stall.currentA())),
            capped(line.timeS(stall.currentA())),
            "s",
            "latest opening at "
                + Require.text(stall.currentA())
                + " A against the damage line of the wire",
            BAND + "; " + DamageLine.SOURCE));
  }

  /** Times from 100 h on are all "for good", so that figures stay finite. */
  private static double capped(double timeS) {
    return Math.min(timeS, DamageLine.FOR_GOOD_S);
  }
}
