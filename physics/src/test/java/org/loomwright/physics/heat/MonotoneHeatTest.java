package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.wire.Class5;
import org.loomwright.physics.wire.Conductor;

/**
 * Heat of equal wires and the allowed current over the whole stated range: more current is never
 * cooler, a thicker wire never hotter, more wires never allow more.
 */
final class MonotoneHeatTest {
  /** Share by which a root found by halving may be off. */
  private static final double ROUNDING = 1e-9;

  @Provide
  Arbitrary<List<Conductor>> catalogues() {
    return Arbitraries.of(
        Conductor.metricCatalogue(), Conductor.awgCatalogue(), Class5.plain(), Class5.tinned());
  }

  @Provide
  Arbitrary<Double> ambients() {
    return Arbitraries.oneOf(Arbitraries.of(-60.0, 250.0), TestConductors.from(-60, 250));
  }

  @Provide
  Arbitrary<Double> ratings() {
    return Arbitraries.oneOf(Arbitraries.of(40.0, 60.0, 300.0), TestConductors.from(40, 300));
  }

  @Provide
  Arbitrary<Integer> counts() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(1, 25), Arbitraries.integers().between(1, 999));
  }

  @Provide
  Arbitrary<OptionalDouble> shares() {
    return Arbitraries.oneOf(
            TestConductors.from(0.01, 1), Arbitraries.of(0.001, 0.05, 0.1, 0.2, 1.0))
        .map(OptionalDouble::of)
        .injectDuplicates(0.1)
        .edgeCases(config -> config.add(OptionalDouble.empty()));
  }

  @Provide
  Arbitrary<Double> currents() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 1e-6), TestConductors.from(0, 60), TestConductors.from(0, 2000));
  }

  private static double temperatureC(WireHeat.Lying lying, double currentA) {
    try {
      double t = WireHeat.temperature(lying, currentA).conductorC();
      assertThat(t).isBetween(lying.ambientC() - 1e-6, 1083.0);
      return t;
    } catch (SumException e) {
      assertThat(e).hasMessageContaining("melting point of copper");
      return Double.POSITIVE_INFINITY;
    }
  }

  @Property(tries = 300)
  void moreCurrentIsNeverCoolerAndAThickerWireNeverHotter(
      @ForAll("catalogues") List<Conductor> sizes,
      @ForAll @IntRange(min = 0, max = 400) int pick,
      @ForAll("ambients") double ambientC,
      @ForAll("counts") int wires,
      @ForAll("shares") OptionalDouble share,
      @ForAll("currents") double a,
      @ForAll("currents") double b) {
    Conductor thin = sizes.get(pick % (sizes.size() - 1));
    Conductor thick = sizes.get(pick % (sizes.size() - 1) + 1);
    WireHeat.Lying lying = new WireHeat.Lying(thin, ambientC, wires, share);
    double base = temperatureC(lying, Math.min(a, b));
    assertThat(temperatureC(lying, Math.max(a, b))).isGreaterThanOrEqualTo(base - 1e-6);
    assertThat(temperatureC(new WireHeat.Lying(thick, ambientC, wires, share), Math.min(a, b)))
        .isLessThanOrEqualTo(base + 1e-6);
    assertThat(temperatureC(new WireHeat.Lying(thin, ambientC, wires + 1, share), Math.min(a, b)))
        .isGreaterThanOrEqualTo(base - 1e-6);
  }

  @Property(tries = 300)
  void moreWiresAndThinnerOnesNeverAllowMore(
      @ForAll("catalogues") List<Conductor> sizes,
      @ForAll @IntRange(min = 0, max = 400) int pick,
      @ForAll("ambients") double ambientC,
      @ForAll("counts") int wires,
      @ForAll("shares") OptionalDouble share,
      @ForAll("ratings") double ratingC) {
    Conductor thin = sizes.get(pick % (sizes.size() - 1));
    Conductor thick = sizes.get(pick % (sizes.size() - 1) + 1);
    Ampacity.Result base = Ampacity.of(new Ampacity.Input(thin, ratingC, ambientC, wires, share));
    Ampacity.Result more =
        Ampacity.of(new Ampacity.Input(thin, ratingC, ambientC, wires + 1, share));
    Ampacity.Result thicker =
        Ampacity.of(new Ampacity.Input(thick, ratingC, ambientC, wires, share));
    Ampacity.Result warmer =
        Ampacity.of(new Ampacity.Input(thin, ratingC, Math.min(250, ambientC + 3), wires, share));
    assertThat(base.allowedA()).isBetween(0.0, 1e5);
    assertThat(more.heatBalanceA()).isLessThanOrEqualTo(base.heatBalanceA() * (1 + ROUNDING));
    assertThat(more.allowedA()).isLessThanOrEqualTo(base.allowedA() * (1 + ROUNDING));
    assertThat(warmer.allowedA()).isLessThanOrEqualTo(base.allowedA() * (1 + ROUNDING));
    assertThat(thicker.heatBalanceA()).isGreaterThanOrEqualTo(base.heatBalanceA() * (1 - ROUNDING));
    assertThat(thicker.allowedA()).isGreaterThanOrEqualTo(base.allowedA() * (1 - ROUNDING));
  }

  /** The loss of the transient is that of the steady sum in every bundle. */
  @Property(tries = 25)
  void aLongTimeEndsAtTheSteadyTemperatureOfTheBundle(
      @ForAll("catalogues") List<Conductor> sizes,
      @ForAll @IntRange(min = 0, max = 400) int pick,
      @ForAll @IntRange(min = 1, max = 30) int wires,
      @ForAll("shares") OptionalDouble share) {
    Conductor c = sizes.get(pick % sizes.size());
    WireHeat.Lying lying = new WireHeat.Lying(c, 40, wires, share);
    double currentA = WireHeat.current(lying, 105).currentA();
    assertThat(
            WireTransient.of(lying, ThermalMass.copperOnly(c))
                .temperatureAfterC(40, new Phase(currentA, 1e8)))
        .isBetween(105 - 0.05, 105 + 0.05);
  }
}
