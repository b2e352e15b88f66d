package org.loomwright.physics.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.TestConductors;

final class ResistanceTest {
  private static double ohm(Conductor c, double lengthM, double temperatureC) {
    return Resistance.of(new Resistance.Input(c, lengthM, temperatureC)).resistanceOhm();
  }

  /** By hand: 4 m of 2.5 mm² at 105 °C: 4 · 7.60e-3 · 339.5/254.5 = 0.040553 ohm. */
  @Test
  void byHand() {
    assertThat(ohm(Conductor.metric(2.5), 4, 105)).isCloseTo(0.040553, within(1e-6));
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Double> lengths() {
    return TestConductors.from(0, 1e6);
  }

  @Provide
  Arbitrary<Double> temperatures() {
    return TestConductors.from(-100, 1083);
  }

  @Property
  void growsWithLengthAndTemperature(
      @ForAll("conductors") Conductor c,
      @ForAll("lengths") double a,
      @ForAll("lengths") double b,
      @ForAll("temperatures") double s,
      @ForAll("temperatures") double t) {
    double base = ohm(c, Math.min(a, b), Math.min(s, t));
    assertThat(base).isNotNegative().isFinite();
    assertThat(ohm(c, Math.max(a, b), Math.min(s, t))).isGreaterThanOrEqualTo(base);
    assertThat(ohm(c, Math.min(a, b), Math.max(s, t))).isGreaterThanOrEqualTo(base);
  }
}
