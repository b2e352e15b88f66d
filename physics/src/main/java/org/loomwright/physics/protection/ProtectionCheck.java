package org.loomwright.physics.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.heat.ThermalMass;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

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
  private static final String RATING = "rating of the fuse";
  private static final String SURE = "current below which the fuse may never open";
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
    trace.given(RATING + ", " + fuse.label(), fuse.ratingA(), "A");
    trace
        .addAll(loading.trace())
        .given("steady load", request.continuousA(), "A")
        .line(
            "load over rating",
            "steady load / " + RATING,
            request.continuousA() / fuse.ratingA(),
            "of the rating",
            "")
        .addAll(faults.trace());
    wireLines();
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

  /** What the wire stands for good, and what its damage line rests on. */
  private void wireLines() {
    DamageLine.Wire wire = request.wire();
    Conductor conductor = wire.lying().conductor();
    ThermalMass mass = ThermalMass.copperOnly(conductor);
    trace
        .addAll(WireHeat.current(wire.lying(), wire.ratingC()).trace())
        .line(
            "current the wire carries for good",
            "current in each loaded wire",
            line.enduranceA(),
            "A",
            DamageLine.SOURCE)
        .line(
            SURE,
            "M * "
                + RATING
                + ", M = "
                + OpeningWords.number(surelyOpensA() / request.fuse().ratingA()),
            surelyOpensA(),
            "A",
            BAND)
        .given("conductor area of " + conductor.label(), conductor.areaMm2(), "mm²")
        .line(
            "heat stored per kelvin",
            "c S, c = "
                + OpeningWords.number(mass.totalJPerMK() / conductor.areaMm2())
                + " J/(K cm³)",
            mass.totalJPerMK(),
            "J/(m K)",
            mass.source())
        .given("conductor at the start of a fault", wire.startC(), "°C")
        .line(
            "conductor at the end of a short circuit",
            "published, allowed for up to 5 s",
            wire.insulation().finalC(),
            "°C",
            wire.insulation().source());
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
    double warmA = start.currentA() / factor;
    double opensS = fuse.shortestOpeningS(warmA);
    String multiple = "multiple of the warm fuse at the starting current";
    trace
        .given("starting current", start.currentA(), "A")
        .given("time of the starting current", start.durationS(), "s")
        .line(
            multiple,
            "starting current / (re-rating by ambient * " + RATING + ")",
            warmA / fuse.ratingA(),
            "1",
            FuseRerating.source(fuse.family()))
        .line(
            "earliest opening of the warm fuse at the starting current",
            OpeningWords.shortest(fuse, warmA, multiple),
            opensS,
            "s",
            BAND);
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
    show(name, fromA, toA, worstA, opensS, damageS);
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

  private void show(
      String name, double fromA, double toA, double worstA, double opensS, double damageS) {
    Fuse fuse = request.fuse();
    String current = name + ": worst current";
    boolean atEnd = worstA == toA;
    double multiple = worstA / fuse.ratingA();
    Optional<FuseGate> below =
        fuse.gates().stream()
            .filter(g -> g.multiple() < multiple * (1 - 1e-9) && Double.isFinite(g.maxS()))
            .reduce((a, b) -> b);
    boolean step =
        fuse.gates().stream().anyMatch(g -> g.multiple() * fuse.ratingA() == worstA)
            && below.filter(g -> g.maxS() == opensS).isPresent();
    String opens =
        toA < fromA
            ? "100 h: so small a fault may never open the fuse"
            : step
                ? below.map(OpeningWords::step).orElseThrow()
                : OpeningWords.longest(fuse, worstA, current, RATING);
    trace
        .line(
            current,
            atEnd
                ? worstA == faults.endOfLineA()
                    ? "fault at the end of the line"
                    : "fault near the source"
                : "M * "
                    + RATING
                    + ", M = "
                    + OpeningWords.number(multiple)
                    + (step ? ", just below this step of the band" : ", worst of 64 looked at"),
            worstA,
            "A",
            BAND)
        .line(name + ": fuse is open by then", opens, opensS, "s", BAND);
    Conductor conductor = request.wire().lying().conductor();
    trace.line(
        name + ": heating up without loss, sooner than with it",
        "heat stored per kelvin * 254.5 / (r20 ("
            + current
            + ")²) * ln((234.5 + conductor at the end of a short circuit) / (234.5 + conductor at"
            + " the start of a fault)), r20 = "
            + Require.text(conductor.ohmPerM20C())
            + " ohm/m",
        lossless(worstA),
        "s",
        "IEC 60949");
    trace.line(
        name + ": wire is damaged",
        damageS == DamageLine.FOR_GOOD_S
            ? "100 h: carried for good"
            : "C dT/dt = I² r(T) - q(T) up to the temperature allowed for that time",
        damageS,
        "s",
        DamageLine.SOURCE);
  }

  /** Time from the start to the end temperature if all heat stays in the copper, s. */
  private double lossless(double currentA) {
    Conductor conductor = request.wire().lying().conductor();
    double perKelvin = conductor.ohmPerM20C() / (Copper.ZERO_RESISTANCE_C + 20);
    return ThermalMass.copperOnly(conductor).totalJPerMK()
        / (perKelvin * currentA * currentA)
        * Math.log(
            (Copper.ZERO_RESISTANCE_C + request.wire().insulation().finalC())
                / (Copper.ZERO_RESISTANCE_C + request.wire().startC()));
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
    double atEndA = faults.endOfLineA();
    trace
        .line(
            "latest opening at the fault at the end of the line",
            OpeningWords.longest(request.fuse(), atEndA, "fault at the end of the line", RATING),
            capped(request.fuse().longestOpeningS(atEndA)),
            "s",
            BAND)
        .line(
            "time allowed for a fault at the end of the line",
            "given",
            request.openingTimeS(),
            "s",
            "common practice, the span of IEC 60364-5-54");
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
    trace.line(
        "breaking capacity of the " + request.fuse().family().label(),
        "published",
        request.fuse().family().breakingCapacityA(),
        "A",
        "ISO 8820 (from memory)");
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
    trace
        .given("stalled current", stall.currentA(), "A")
        .line(
            "latest opening at the stalled current",
            OpeningWords.longest(fuse, stall.currentA(), "stalled current", RATING),
            capped(fuse.longestOpeningS(stall.currentA())),
            "s",
            BAND)
        .line(
            "wire is damaged by the stalled current",
            "C dT/dt = I² r(T) - q(T) up to the temperature allowed for that time",
            capped(line.timeS(stall.currentA())),
            "s",
            DamageLine.SOURCE);
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
