package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.InsulationMaterial;

final class WireTransientTest {
  private static WireTransient wire(Conductor c, double ambientC) {
    return WireTransient.of(
        WireHeat.Lying.single(c, ambientC), ThermalMass.whole(c, InsulationMaterial.PVC));
  }

  /** Constant resistance and constant h: T = Ta + (P/h)(1 - e^(-ht/C)), exact to rounding. */
  @Test
  void agreesWithTheClosedFormOfOneTimeConstant() {
    double mass = 9;
    double h = 0.35;
    double ohmPerM = 0.008;
    LossCurve straight =
        new LossCurve(List.of(25.0, 60.0, 61.0, 400.0), List.of(0.0, 35 * h, 36 * h, 375 * h));
    LumpedBody body = new LumpedBody(mass, ohmPerM, 0, straight);
    for (double currentA : new double[] {0, 10, 30, 60}) {
      for (double start : new double[] {-40, 25, 48, 150}) {
        double end = 25 + currentA * currentA * ohmPerM / h;
        for (double t : new double[] {1e-6, 0.1, 3, 25, 100, 2000}) {
          double exact = end + (start - end) * Math.exp(-h * t / mass);
          assertThat(body.after(start, currentA, t).temperatureC())
              .as(currentA + " A from " + start + " °C after " + t + " s")
              .isCloseTo(exact, within(1e-9));
        }
        double target = (start + end) / 2;
        if (start != end) {
          assertThat(body.timeBetweenS(start, target, currentA).orElseThrow())
              .isCloseTo(mass / h * Math.log(2), Percentage.withPercentage(1e-7));
        }
        assertThat(body.timeBetweenS(start, end + (end - start), currentA).isPresent())
            .isEqualTo(start == end);
      }
    }
  }

  /** Resistance rising with temperature, no loss: the adiabatic logarithm of IEC 60949. */
  @Test
  void withoutLossItIsTheAdiabaticSum() {
    Conductor c = Conductor.awg(14);
    LossCurve none = new LossCurve(List.of(20.0, 1000.0), List.of(0.0, 0.0));
    double r1 = c.ohmPerM20C() / 254.5;
    LumpedBody body = new LumpedBody(ThermalMass.copperOnly(c).totalJPerMK(), r1 * 234.5, r1, none);
    double currentA = 400;
    double exact =
        3.45
            * c.areaMm2()
            * 254.5
            / (currentA * currentA * c.ohmPerM20C())
            * Math.log((234.5 + 160) / (234.5 + 70));
    assertThat(body.timeBetweenS(70, 160, currentA).orElseThrow())
        .isCloseTo(exact, Percentage.withPercentage(1e-7));
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Double> shares() {
    return TestConductors.from(0.05, 1.8);
  }

  @Provide
  Arbitrary<Double> times() {
    return TestConductors.from(0.001, 400);
  }

  @Provide
  Arbitrary<Double> starts() {
    return TestConductors.from(-40, 160);
  }

  private static double ratedA(Conductor c) {
    return WireHeat.current(WireHeat.Lying.single(c, 40), 105).currentA();
  }

  /** In the end it stands at the steady temperature, from above and from below. */
  @Property(tries = 60)
  void settlesAtTheSteadyTemperature(
      @ForAll("conductors") Conductor c,
      @ForAll("shares") double share,
      @ForAll("starts") double startC) {
    double currentA = share * ratedA(c);
    double steady = WireHeat.temperature(WireHeat.Lying.single(c, 40), currentA).conductorC();
    assertThat(wire(c, 40).temperatureAfterC(startC, new Phase(currentA, 1e7)))
        .isCloseTo(steady, within(0.002 + 2e-4 * (steady - 40)));
  }

  /** Oracle: the equation in small Runge-Kutta steps with the unabridged heat balance. */
  @Property(tries = 12)
  void agreesWithSmallSteps(@ForAll("conductors") Conductor c, @ForAll("shares") double share) {
    double currentA = share * ratedA(c);
    WireTransient wire = wire(c, 40);
    HeatBalance balance = HeatBalance.single(c, 40);
    double mass = wire.mass().totalJPerMK();
    double seconds = 120;
    int steps = 600;
    double h = seconds / steps;
    double t = 55;
    for (int i = 0; i < steps; i++) {
      double k1 = rate(balance, c, mass, currentA, t);
      double k2 = rate(balance, c, mass, currentA, t + h / 2 * k1);
      double k3 = rate(balance, c, mass, currentA, t + h / 2 * k2);
      double k4 = rate(balance, c, mass, currentA, t + h * k3);
      t += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    assertThat(wire.temperatureAfterC(55, new Phase(currentA, seconds)))
        .isCloseTo(t, within(0.005 + 1e-4 * Math.abs(t - 40)));
  }

  private static double rate(
      HeatBalance balance, Conductor c, double mass, double currentA, double t) {
    double q = t <= 40 ? 0 : balance.atConductor(t).heat().totalWPerM();
    return (currentA * currentA * c.resistanceOhmPerM(t) - q) / mass;
  }

  /** Heat put in less heat given off is what is stored, both summed here from temperatures. */
  @Property(tries = 20)
  void energyBalances(
      @ForAll("conductors") Conductor c,
      @ForAll("shares") double share,
      @ForAll("times") double seconds) {
    double currentA = share * ratedA(c);
    WireTransient wire = wire(c, 40);
    HeatBalance balance = HeatBalance.single(c, 40);
    int steps = 400;
    double in = 0;
    double out = 0;
    for (int i = 0; i <= steps; i++) {
      double weight = (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2) / 3.0 * seconds / steps;
      double t = wire.temperatureAfterC(40, new Phase(currentA, seconds * i / steps));
      in += weight * currentA * currentA * c.resistanceOhmPerM(t);
      out += weight * (t <= 40 ? 0 : balance.atConductor(t).heat().totalWPerM());
    }
    double end = wire.temperatureAfterC(40, new Phase(currentA, seconds));
    double stored = wire.mass().totalJPerMK() * (end - 40);
    assertThat(in - out).isCloseTo(stored, within(1e-3 * in + 1e-9));
  }

  @Property(tries = 80)
  void timeUndoesTemperature(
      @ForAll("conductors") Conductor c,
      @ForAll("shares") double share,
      @ForAll("times") double seconds,
      @ForAll("starts") double startC) {
    double currentA = share * ratedA(c);
    WireTransient wire = wire(c, 40);
    double t = wire.temperatureAfterC(startC, new Phase(currentA, seconds));
    double steady = WireHeat.temperature(WireHeat.Lying.single(c, 40), currentA).conductorC();
    // Close to the steady state a time no longer tells temperatures apart.
    if (Math.abs(t - steady) > 0.5) {
      assertThat(wire.timeToReachS(startC, t, currentA).orElseThrow())
          .isCloseTo(seconds, Percentage.withPercentage(0.01));
    }
  }

  @Property(tries = 80)
  void hotterWithCurrentStartAndThinnerWire(
      @ForAll("shares") double share,
      @ForAll("times") double seconds,
      @ForAll("starts") double startC) {
    List<Conductor> all = Conductor.metricCatalogue();
    double currentA = share * ratedA(all.get(5));
    double thinner = 1e9;
    for (Conductor c : all.subList(5, all.size())) {
      WireTransient wire = wire(c, 40);
      double base = wire.temperatureAfterC(startC, new Phase(currentA, seconds));
      assertThat(wire.temperatureAfterC(startC, new Phase(currentA * 1.1, seconds)))
          .isGreaterThanOrEqualTo(base);
      assertThat(wire.temperatureAfterC(startC + 1, new Phase(currentA, seconds)))
          .isGreaterThanOrEqualTo(base);
      if (startC <= 40) {
        // From the ambient or below, less copper is never the cooler.
        assertThat(Math.max(base, 40)).isLessThanOrEqualTo(Math.max(thinner, 40) + 1e-6);
        thinner = base;
      }
    }
  }

  @Test
  void bundleAndCoveringWarmFaster() {
    Conductor c = Conductor.metric(1.5);
    ThermalMass mass = ThermalMass.whole(c, InsulationMaterial.PVC);
    double alone = wire(c, 40).timeToReachS(40, 90, 30).orElseThrow();
    WireTransient taped =
        WireTransient.of(WireHeat.Lying.single(c, 40), mass, List.of(Covering.conduit(1)));
    WireTransient bundled =
        WireTransient.of(new WireHeat.Lying(c, 40, 12, OptionalDouble.empty()), mass);
    assertThat(taped.timeToReachS(40, 90, 30).orElseThrow()).isLessThan(alone);
    assertThat(bundled.timeToReachS(40, 90, 30).orElseThrow()).isLessThan(alone);
    double steady =
        WireHeat.temperature(new WireHeat.Lying(c, 40, 12, OptionalDouble.empty()), 8).conductorC();
    assertThat(bundled.temperatureAfterC(40, new Phase(8, 1e6))).isCloseTo(steady, within(0.01));
  }

  /** A motor: 1 s start, 30 s run, then stalled. */
  @Test
  void courseFollowsThePhases() {
    Conductor c = Conductor.metric(2.5);
    WireTransient wire = wire(c, 60);
    WireTransient.Course course =
        wire.course(60, List.of(new Phase(80, 1), new Phase(15, 30), new Phase(60, 20)));
    assertThat(course.endC()).hasSize(3);
    double byHand = wire.temperatureAfterC(60, new Phase(80, 1));
    assertThat(course.endC().get(0)).isEqualTo(byHand);
    assertThat(course.endC().get(1)).isEqualTo(wire.temperatureAfterC(byHand, new Phase(15, 30)));
    assertThat(course.hottestC()).isEqualTo(course.endC().get(2));
    assertThat(course.trace().lines()).isNotEmpty();
  }

  /** Oracle: the cycle repeated until nothing moves. */
  @Property(tries = 20)
  void dutyCycleIsWhereRepetitionSettles(
      @ForAll("conductors") Conductor c, @ForAll("shares") double share) {
    WireTransient wire = wire(c, 40);
    double currentA = 1.5 * share * ratedA(c);
    List<Phase> cycle = List.of(new Phase(currentA, 20), new Phase(0, 60));
    WireTransient.Course settled = wire.dutyCycle(cycle);
    double t = 40;
    double hottest = 40;
    for (int i = 0; i < 400; i++) {
      hottest = wire.temperatureAfterC(t, cycle.get(0));
      t = wire.temperatureAfterC(hottest, cycle.get(1));
    }
    assertThat(settled.endC().get(1)).isCloseTo(t, within(1e-3 + 1e-3 * (t - 40)));
    assertThat(settled.hottestC()).isCloseTo(hottest, within(1e-3 + 1e-3 * (hottest - 40)));
    // Never hotter than at the current for good, never cooler than at the mean square.
    double rms = currentA * Math.sqrt(20.0 / 80);
    double steadyRms = wire.temperatureAfterC(40, new Phase(rms, 1e7));
    assertThat(settled.hottestC()).isGreaterThanOrEqualTo(steadyRms - 3);
    assertThat(settled.hottestC())
        .isLessThanOrEqualTo(wire.temperatureAfterC(40, new Phase(currentA, 1e7)) + 1e-3);
  }

  @Test
  void idleCycleRestsAtTheAmbient() {
    WireTransient.Course course = wire(Conductor.metric(1), 35).dutyCycle(List.of(new Phase(0, 5)));
    assertThat(course.hottestC()).isCloseTo(35, within(1e-9));
  }

  @Test
  void neverReachedIsEmptyAndMeltingIsRefused() {
    WireTransient wire = wire(Conductor.metric(1), 40);
    assertThat(wire.timeToReachS(40, 105, 1)).isEmpty();
    assertThat(wire.timeToReachS(90, 60, 0)).isPresent();
    assertThat(wire.timeToReachS(90, 39, 0)).isEmpty();
    assertThat(wire.timeToReachS(50, 50, 3)).hasValue(0);
    assertThatThrownBy(() -> wire.temperatureAfterC(40, new Phase(300, 60)))
        .isInstanceOf(SumException.class)
        .hasMessageContaining("reaches the melting point of copper after")
        .hasMessageContaining("s at 300 A");
    assertThatThrownBy(() -> wire.dutyCycle(List.of(new Phase(300, 60), new Phase(0, 5))))
        .isInstanceOf(SumException.class);
    assertThatThrownBy(() -> wire.temperatureAfterC(-100, new Phase(1, 1)))
        .hasMessageContaining("temperature at the start must be from -60 to 1083 °C");
    assertThatThrownBy(() -> new Phase(-1, 1)).hasMessageContaining("from 0 to 100000 A");
    assertThatThrownBy(() -> wire.dutyCycle(List.of(new Phase(1, 0))))
        .hasMessageContaining("length of the duty cycle must be above zero");
  }
}
