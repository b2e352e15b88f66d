package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class WireHeatTest {
  private static final int[] RATINGS = {60, 75, 80, 90, 105, 125, 200};

  private static WireHeat.Lying lying(Conductor c, double ambientC, int wires, double share) {
    return new WireHeat.Lying(c, ambientC, wires, OptionalDouble.of(share));
  }

  /** 33 CFR 183.425 Table 5, single wire at 30 °C, a fully independent figure. */
  @Test
  void agreesWithTheHandbookTable() {
    int compared = 0;
    for (Row row : ReferenceTables.cfrAmpacity().rows()) {
      int gauge = row.gauge("awg");
      for (int rating : RATINGS) {
        double table = row.number("t" + rating + "C_A");
        double ours =
            WireHeat.current(WireHeat.Lying.single(Conductor.awg(gauge), 30), rating).currentA();
        String what = gauge + " AWG at " + rating + " °C: " + ours + " A against " + table;
        assertThat(ours / table).as(what).isLessThan(1.6);
        if (gauge >= 8 && rating >= 80 && rating <= 125) {
          compared++;
          assertThat(ours / table).as(what).isBetween(0.90, 1.30);
        }
      }
    }
    assertThat(compared).isEqualTo(24);
  }

  /** The curves of MIL-W-5088L for 20 AWG at 150 °C in 70 °C. */
  @Test
  void bundlesAgreeWithThePublishedCurves() {
    Conductor c = Conductor.awg(20);
    double free = WireHeat.current(WireHeat.Lying.single(c, 70), 150).currentA();
    for (Row row : ReferenceTables.bundleCurves().rows()) {
      int wires = (int) row.number("wires");
      for (int load = 20; load <= 100; load += 20) {
        double ours = WireHeat.current(lying(c, 70, wires, load / 100.0), 150).currentA() / free;
        double curve = row.number("load" + load + "pct");
        assertThat(ours / curve)
            .as(wires + " wires at " + load + " %: " + ours + " against " + curve)
            .isBetween(0.70, 1.25);
      }
    }
  }

  /**
   * A space agency's preferred-parts rating of a bundle in vacuum. Ours in air is above it; what
   * radiation alone carries away at our surface temperature allows 1 to 1.7 times the rating, which
   * keeps a reserve of its own.
   */
  @Test
  void aBundleInAirCarriesMoreThanItsRatingInVacuum() {
    for (Row row : ReferenceTables.vacuumBundle().rows()) {
      WireHeat.Result air =
          WireHeat.current(
              new WireHeat.Lying(
                  Conductor.awg(row.gauge("awg")),
                  row.number("ambient_C"),
                  (int) row.number("wires"),
                  OptionalDouble.empty()),
              row.number("rating_C"));
      double radiated = air.radiationWPerM() / (air.radiationWPerM() + air.convectionWPerM());
      double radiationA = air.currentA() * Math.sqrt(radiated);
      assertThat(air.currentA()).as(row.where()).isGreaterThan(row.number("rated_A"));
      assertThat(radiationA / row.number("rated_A")).as(row.where()).isBetween(1.0, 1.7);
    }
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Double> ambients() {
    return TestConductors.from(-40, 100);
  }

  @Provide
  Arbitrary<Double> rises() {
    return TestConductors.from(1, 120);
  }

  @Provide
  Arbitrary<Double> shares() {
    return TestConductors.from(0.05, 1);
  }

  /** Heat made = heat given off, reckoned here from the result alone. */
  @Property(tries = 500)
  void energyBalances(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll("rises") double rise,
      @ForAll @IntRange(min = 1, max = 60) int wires,
      @ForAll("shares") double share) {
    WireHeat.Result r = WireHeat.current(lying(c, ambientC, wires, share), ambientC + rise);
    double joule = r.currentA() * r.currentA() * c.ohmPerM20C() * (234.5 + r.conductorC()) / 254.5;
    double givenOff = r.convectionWPerM() + r.radiationWPerM();
    // A bundle counts as a smaller one, down to its single wire, where that is the worse.
    assertThat(IntStream.rangeClosed(1, wires).mapToDouble(n -> Math.max(1, n * share)))
        .anySatisfy(
            loaded ->
                assertThat(givenOff / joule).isCloseTo(loaded, Percentage.withPercentage(0.01)));
    assertThat(r.conductorC()).isCloseTo(ambientC + rise, within(1e-6));
    assertThat(r.surfaceC()).isBetween(ambientC, r.conductorC());
  }

  /** Conduction through the insulation of a single wire, reckoned here: ΔT = q ln(D/d) / (2πk). */
  @Property(tries = 500)
  void insulationCarriesTheHeat(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll("rises") double rise) {
    WireHeat.Result r = WireHeat.current(WireHeat.Lying.single(c, ambientC), ambientC + rise);
    double q = r.convectionWPerM() + r.radiationWPerM();
    double across =
        q * Math.log(c.overallDiameterMm() / c.conductorDiameterMm()) / (2 * Math.PI * 0.15);
    assertThat(r.conductorC() - r.surfaceC()).isCloseTo(across, within(1e-6 + 1e-6 * across));
  }

  @Property(tries = 500)
  void temperatureUndoesCurrent(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll("rises") double rise,
      @ForAll @IntRange(min = 1, max = 40) int wires,
      @ForAll("shares") double share) {
    WireHeat.Lying where = lying(c, ambientC, wires, share);
    double currentA = WireHeat.current(where, ambientC + rise).currentA();
    assertThat(WireHeat.temperature(where, currentA).conductorC())
        .isCloseTo(ambientC + rise, within(1e-4));
  }

  @Property(tries = 500)
  void hotterWithCurrentAmbientAndNeighbours(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll("rises") double rise,
      @ForAll @IntRange(min = 1, max = 40) int wires,
      @ForAll("shares") double share) {
    WireHeat.Lying where = lying(c, ambientC, wires, share);
    double currentA = WireHeat.current(where, ambientC + rise).currentA();
    double baseC = WireHeat.temperature(where, currentA).conductorC();
    assertThat(WireHeat.temperature(where, currentA * 1.02).conductorC()).isGreaterThan(baseC);
    assertThat(WireHeat.temperature(lying(c, ambientC + 1, wires, share), currentA).conductorC())
        .isGreaterThan(baseC);
    assertThat(WireHeat.temperature(WireHeat.Lying.single(c, ambientC), currentA).conductorC())
        .isLessThanOrEqualTo(baseC + 1e-6);
    assertThat(WireHeat.current(lying(c, ambientC, wires, 1), ambientC + rise).currentA())
        .isLessThanOrEqualTo(currentA * (1 + 1e-9));
  }

  @Test
  void moreWiresInABundleAllowLess() {
    double before = Double.POSITIVE_INFINITY;
    for (int wires = 1; wires <= 60; wires++) {
      double now =
          WireHeat.current(
                  new WireHeat.Lying(Conductor.metric(1), 40, wires, OptionalDouble.empty()), 105)
              .currentA();
      assertThat(now).as(wires + " wires").isLessThan(before);
      before = now;
    }
  }

  @Test
  void ambientAtTheRatingLeavesNothing() {
    WireHeat.Lying hot = WireHeat.Lying.single(Conductor.metric(1), 105);
    assertThat(WireHeat.current(hot, 105).currentA()).isZero();
    assertThat(WireHeat.current(hot, 90).currentA()).isZero();
    assertThat(WireHeat.temperature(hot, 0).conductorC()).isCloseTo(105, within(1e-6));
  }

  @Test
  void aWireThatWouldMeltIsRefused() {
    assertThatThrownBy(
            () -> WireHeat.temperature(WireHeat.Lying.single(Conductor.metric(0.5), 20), 500))
        .isInstanceOf(SumException.class)
        .hasMessage("0.5 mm² has no steady temperature below the melting point of copper at 500 A");
    assertThatThrownBy(
            () ->
                WireHeat.temperature(
                    new WireHeat.Lying(Conductor.metric(0.5), 20, 500, OptionalDouble.empty()), 50))
        .isInstanceOf(SumException.class);
  }

  @Test
  void badInputIsRefused() {
    Conductor c = Conductor.metric(1);
    assertThatThrownBy(() -> lying(c, 20, 0, 1)).hasMessageContaining("number of wires");
    assertThatThrownBy(() -> lying(c, 20, 2, 0)).hasMessageContaining("loaded share");
    assertThatThrownBy(() -> lying(c, 20, 2, 1.2)).hasMessageContaining("but is 120 %");
    assertThatThrownBy(() -> lying(c, 400, 2, 1)).hasMessageContaining("ambient temperature");
    assertThatThrownBy(() -> WireHeat.temperature(lying(c, 20, 1, 1), -1))
        .hasMessageContaining("current must not be below zero");
  }
}
