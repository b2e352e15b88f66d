package org.loomwright.physics.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * Conductor temperature over time: copper and insulation as one body that is heated by I² r(T) and
 * cooled by the heat balance of {@link WireHeat}, whose steady temperatures it reaches in the end.
 * In a bundle all loaded wires carry the current at the same time, and each warms only its own
 * metal and insulation.
 *
 * <p>Range: temperatures from -60 °C to the melting point of copper. Solved exactly on stretches of
 * straight loss, see {@link LumpedBody}; the loss is within 1e-4 of the heat balance.
 */
public final class WireTransient {
  private static final double LOWEST_C = -60;

  private final WireHeat.Lying lying;
  private final ThermalMass mass;
  private final LumpedBody body;

  private WireTransient(WireHeat.Lying lying, ThermalMass mass, LumpedBody body) {
    this.lying = lying;
    this.mass = mass;
    this.body = body;
  }

  /**
   * @param lying wire, ambient, bundle
   * @param mass what stores heat
   * @param coverings of wire or bundle, from the inside out, possibly none
   */
  public static WireTransient of(WireHeat.Lying lying, ThermalMass mass, List<Covering> coverings) {
    Conductor c = lying.conductor();
    LossCurve loss = WireLoss.of(lying, coverings);
    double perKelvin = c.ohmPerM20C() / (Copper.ZERO_RESISTANCE_C + 20);
    LumpedBody body =
        new LumpedBody(mass.totalJPerMK(), perKelvin * Copper.ZERO_RESISTANCE_C, perKelvin, loss);
    return new WireTransient(lying, mass, body);
  }

  /** Bare wire or bundle. */
  public static WireTransient of(WireHeat.Lying lying, ThermalMass mass) {
    return of(lying, mass, List.of());
  }

  /** Where the wire lies. */
  public WireHeat.Lying lying() {
    return lying;
  }

  /** What stores heat. */
  public ThermalMass mass() {
    return mass;
  }

  /**
   * Conductor temperature after a time at a steady current, °C.
   *
   * @param startC temperature at the start, -60 to 1083 °C
   * @throws SumException if the conductor melts before
   */
  public double temperatureAfterC(double startC, Phase phase) {
    Require.within("temperature at the start", startC, LOWEST_C, Copper.MELTING_C, "°C");
    LumpedBody.Stand stand = body.after(startC, phase.currentA(), phase.durationS());
    if (stand.timeS() < phase.durationS()) {
      throw new SumException(
          lying.conductor().label()
              + " reaches the melting point of copper after "
              + Require.text(Math.round(stand.timeS() * 1000) / 1000.0)
              + " s at "
              + Require.text(phase.currentA())
              + " A");
    }
    return stand.temperatureC();
  }

  /**
   * Time to come from one temperature to another at a steady current, s; empty if it never gets
   * there. Works upward and downward.
   *
   * @param startC temperature at the start, -60 to 1083 °C
   * @param limitC temperature to reach, -60 to 1083 °C
   * @param currentA 0 to 100 000 A
   */
  public OptionalDouble timeToReachS(double startC, double limitC, double currentA) {
    Require.within("temperature at the start", startC, LOWEST_C, Copper.MELTING_C, "°C");
    Require.within("temperature to reach", limitC, LOWEST_C, Copper.MELTING_C, "°C");
    Require.within("current", currentA, 0, 100_000, "A");
    return body.timeBetweenS(startC, limitC, currentA);
  }

  /**
   * First time at which a warming conductor has been on its way for as long as the temperature it
   * has reached is allowed for, s; empty if it never gets that far.
   *
   * @param startC temperature at the start, -60 to 1083 °C
   * @param highestC where the walk ends at the latest, from the start to 1083 °C
   * @param currentA 0 to 100 000 A
   * @param allowedS time allowed for a temperature, s, falling as it rises
   */
  public OptionalDouble timeToMeetS(
      double startC, double highestC, double currentA, DoubleUnaryOperator allowedS) {
    Require.within("temperature at the start", startC, LOWEST_C, Copper.MELTING_C, "°C");
    Require.within("highest temperature", highestC, startC, Copper.MELTING_C, "°C");
    Require.within("current", currentA, 0, 100_000, "A");
    return body.meetsS(startC, highestC, currentA, allowedS);
  }

  /**
   * @param endC temperature at the end of each phase, °C
   * @param hottestC highest temperature, the start included, °C
   * @param trace how it was reached
   */
  public record Course(List<Double> endC, double hottestC, Trace trace) {
    /** Copies the list. */
    public Course {
      endC = List.copyOf(endC);
    }
  }

  /**
   * Temperatures over a row of phases. Within a phase the temperature moves one way only, so the
   * highest is at one of the ends.
   *
   * @param phases at least one
   * @throws SumException if the conductor melts on the way
   */
  public Course course(double startC, List<Phase> phases) {
    Require.within("number of phases", phases.size(), 1, 10_000, "");
    List<Double> ends = new ArrayList<>();
    double t = startC;
    double hottest = startC;
    Trace.Builder trace = Trace.builder();
    trace
        .given("ambient", lying.ambientC(), "°C")
        .given("temperature at the start", startC, "°C")
        .line(
            "heat stored per kelvin",
            "C1 + C2, C1 = "
                + WireHeat.number(mass.copperJPerMK())
                + " J/(m K) of copper, C2 = "
                + WireHeat.number(mass.insulationJPerMK())
                + " J/(m K) of insulation",
            mass.totalJPerMK(),
            "J/(m K)",
            mass.source());
    for (Phase phase : phases) {
      t = temperatureAfterC(t, phase);
      ends.add(t);
      hottest = Math.max(hottest, t);
      trace
          .given("current", phase.currentA(), "A")
          .line(
              "conductor after " + Require.text(phase.durationS()) + " s",
              "C dT/dt = I² r(T) - q(T)",
              t,
              "°C",
              "heat balance with one heat store");
    }
    trace.line("highest temperature", "largest", hottest, "°C", "heat balance");
    return new Course(ends, hottest, trace.build());
  }

  /**
   * The course that a duty cycle settles to when it is repeated for good: the start is the
   * temperature that one round brings back. A warmer start ends warmer, but by less, so it is found
   * by halving.
   *
   * @param cycle phases of one round, together longer than 0 s
   * @throws SumException if the conductor melts
   */
  public Course dutyCycle(List<Phase> cycle) {
    double length = cycle.stream().mapToDouble(Phase::durationS).sum();
    Require.positive("length of the duty cycle", length, "s");
    double ambient = lying.ambientC();
    // Throws where even the first round from cold melts the wire.
    double first = course(ambient, cycle).endC().get(cycle.size() - 1);
    if (first - ambient < 1e-9) {
      return course(first, cycle);
    }
    double start = Roots.rising(t -> t - endOf(t, cycle), ambient, body.loss().highestC(), 1e-9);
    return course(Math.min(start, Copper.MELTING_C), cycle);
  }

  /** End of one round; the top of the curve where it is reached on the way. */
  private double endOf(double startC, List<Phase> cycle) {
    double t = startC;
    for (Phase phase : cycle) {
      t = body.after(t, phase.currentA(), phase.durationS()).temperatureC();
    }
    return t;
  }
}
