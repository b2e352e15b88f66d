package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.heat.Phase;
import org.loomwright.physics.heat.ThermalMass;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.heat.WireTransient;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.SaeWire;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class DamageLineTest {
  private static DamageLine hot(Conductor c, Insulation insulation, double ratingC) {
    return DamageLine.of(DamageLine.Wire.hot(c, insulation, ratingC, 40));
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Conductor> gauges() {
    return Arbitraries.of(Conductor.awgCatalogue());
  }

  @Provide
  Arbitrary<Insulation> insulations() {
    return Arbitraries.of(Insulation.PVC, Insulation.XLPE, Insulation.RUBBER_85);
  }

  /**
   * Short end: I²t = k²S² of IEC 60949. What is given off meanwhile makes the time longer: less
   * than 1 % at 0.01 s, 4 % at 0.1 s for the thinnest wire.
   */
  @Property(tries = 60)
  void shortTimesAreAdiabatic(
      @ForAll("gauges") Conductor c, @ForAll("insulations") Insulation insulation) {
    DamageLine line = hot(c, insulation, 84);
    double k = Withstand.closedFormK(84, insulation.finalC());
    for (double timeS : new double[] {0.01, 0.05, 0.1}) {
      double currentA = k * c.areaMm2() / Math.sqrt(timeS);
      if (currentA < 100_000) {
        assertThat(line.timeS(currentA))
            .as(c.label() + " " + insulation + " " + timeS + " s")
            .isBetween(timeS * (1 - 1e-6), timeS * (timeS <= 0.01 ? 1.01 : 1.04));
      }
    }
  }

  /**
   * At 5 s the wire has given off some heat: never less than adiabatic, up to twice for thin wire.
   */
  @Property(tries = 60)
  void fiveSecondsAreAtLeastAdiabatic(
      @ForAll("gauges") Conductor c, @ForAll("insulations") Insulation insulation) {
    double currentA = Withstand.closedFormK(84, insulation.finalC()) * c.areaMm2() / Math.sqrt(5);
    double timeS = hot(c, insulation, 84).timeS(currentA);
    assertThat(timeS).isGreaterThan(5 * (1 - 1e-6));
    if (c.areaMm2() > 20) {
      assertThat(timeS).isLessThan(7);
    }
  }

  /** Long end: the current of the heat balance, on either side of it. */
  @Property(tries = 60)
  void longTimesAreTheHeatBalance(@ForAll("conductors") Conductor c) {
    DamageLine line = hot(c, Insulation.PVC, 105);
    double allowed = WireHeat.current(WireHeat.Lying.single(c, 40), 105).currentA();
    assertThat(line.enduranceA()).isEqualTo(allowed);
    assertThat(line.timeS(allowed * 0.9999)).isInfinite();
    assertThat(line.timeS(allowed * 1.001)).isBetween(2500.0, 3600.0);
    assertThat(line.timeS(allowed * 1.5)).isLessThan(2000);
  }

  /** On the line the conductor has just the temperature allowed for the time. */
  @Property(tries = 80)
  void meetsTheTransient(@ForAll("conductors") Conductor c, @ForAll("overloads") double overload) {
    DamageLine line =
        DamageLine.of(new DamageLine.Wire(WireHeat.Lying.single(c, 30), Insulation.XLPE, 125, 70));
    double currentA = overload * line.enduranceA();
    double timeS = line.timeS(currentA);
    WireTransient heat = WireTransient.of(WireHeat.Lying.single(c, 30), ThermalMass.copperOnly(c));
    assertThat(heat.temperatureAfterC(70, new Phase(currentA, timeS)))
        .isCloseTo(line.allowedC(timeS), within(0.02));
  }

  @Provide
  Arbitrary<Double> overloads() {
    return TestConductors.from(1.01, 40);
  }

  /** Falls with the current, without jumps, and is never NaN. */
  @Property(tries = 20)
  void fallsSteadilyWithTheCurrent(
      @ForAll("conductors") Conductor c, @ForAll("insulations") Insulation insulation) {
    DamageLine line = hot(c, insulation, 84);
    double before = Double.POSITIVE_INFINITY;
    for (double over = 1.002; over < 60; over *= 1.01) {
      double timeS = line.timeS(over * line.enduranceA());
      assertThat(timeS).isPositive().isLessThan(before);
      if (Double.isFinite(before) && over > 1.3) {
        // 1 % of current takes at most 20 % off the time beyond the knee.
        assertThat(timeS).isGreaterThan(0.80 * before);
      }
      before = timeS;
    }
    assertThat(line.timeS(0)).isInfinite();
  }

  /** Two times that are the same may differ in their last digits. */
  private static final double LESS = 1 - 1e-9;

  @Property(tries = 25)
  void thickerCoolerAndBetterInsulatedStandsLonger(
      @ForAll("overloads") double overload, @ForAll("insulations") Insulation insulation) {
    List<Conductor> all = Conductor.metricCatalogue();
    double currentA = overload * hot(all.get(0), insulation, 84).enduranceA();
    double before = 0;
    for (Conductor c : all) {
      double timeS = hot(c, insulation, 84).timeS(currentA);
      assertThat(timeS).as(c.label()).isGreaterThanOrEqualTo(before * LESS);
      DamageLine cool =
          DamageLine.of(new DamageLine.Wire(WireHeat.Lying.single(c, 40), insulation, 84, 40));
      assertThat(cool.timeS(currentA)).isGreaterThanOrEqualTo(timeS * LESS);
      before = timeS;
    }
  }

  @Property(tries = 40)
  void readsBothWays(@ForAll("conductors") Conductor c, @ForAll("times") double timeS) {
    DamageLine line = hot(c, Insulation.PVC, 105);
    if (line.timeS(100_000) < timeS) {
      assertThat(line.timeS(line.currentA(timeS)))
          .isCloseTo(timeS, Percentage.withPercentage(0.01));
    }
  }

  @Provide
  Arbitrary<Double> times() {
    return TestConductors.from(0.01, 1000);
  }

  @Test
  void allowedTemperatureFallsFromShortCircuitToRating() {
    DamageLine line = hot(Conductor.metric(1), Insulation.PVC, 105);
    assertThat(line.allowedC(0.1)).isEqualTo(160);
    assertThat(line.allowedC(5)).isEqualTo(160);
    assertThat(line.allowedC(Math.sqrt(5 * 3600))).isCloseTo(132.5, within(1e-9));
    assertThat(line.allowedC(3600)).isEqualTo(105);
    assertThat(line.points(200, 30)).hasSize(30);
    assertThat(line.points(1, 30)).isEmpty();
  }

  /**
   * Onderdonk's melting current as reprinted: the adiabatic sum to 1083 °C comes within 3 %, since
   * Onderdonk takes slightly different constants of copper.
   */
  @Test
  void meltingAgreesWithOnderdonk() {
    for (Row row : ReferenceTables.fusingCurrent().rows()) {
      double area = row.number("cmil") * SaeWire.MM2_PER_CMIL;
      double k = Withstand.closedFormK(row.number("ambient_C"), row.number("melting_C"));
      assertThat(k * area / Math.sqrt(row.number("time_s")))
          .as(row.where())
          .isCloseTo(row.number("current_A"), Percentage.withPercentage(3));
    }
  }

  @Test
  void aBundleOfFaultsIsDamagedSooner() {
    Conductor c = Conductor.metric(1.5);
    DamageLine alone = hot(c, Insulation.PVC, 105);
    DamageLine bundle =
        DamageLine.of(
            new DamageLine.Wire(
                new WireHeat.Lying(c, 40, 10, OptionalDouble.empty()), Insulation.PVC, 105, 105));
    assertThat(bundle.enduranceA()).isLessThan(alone.enduranceA());
    assertThat(bundle.timeS(40)).isLessThan(alone.timeS(40));
  }

  @Test
  void outOfRangeIsRefusedWithTheRange() {
    Conductor c = Conductor.metric(1);
    assertThatThrownBy(() -> hot(c, Insulation.PVC, 170))
        .isInstanceOf(SumException.class)
        .hasMessage("insulation rating must be from 41 to 159 °C, but is 170 °C");
    assertThatThrownBy(
            () -> new DamageLine.Wire(WireHeat.Lying.single(c, 40), Insulation.PVC, 105, 120))
        .hasMessageContaining("conductor at the start must be from 40 to 105 °C");
    assertThatThrownBy(() -> hot(c, Insulation.PVC, 105).timeS(-1))
        .hasMessageContaining("current must be from 0 to 100000 A");
    assertThatThrownBy(() -> hot(c, Insulation.PVC, 105).currentA(0))
        .hasMessageContaining("time must be from 0.001 to 360000 s");
    assertThatThrownBy(() -> hot(Conductor.metric(120), Insulation.PVC, 105).currentA(0.002))
        .hasMessageContaining("stands more than 100000 A for 0.002 s");
  }
}
