package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
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

final class FaaHandbookTest {
  private static final double M_PER_FT = 0.3048;

  /** AC 43.13-1B par. 11-66 example no. 2, every printed figure to the digits printed. */
  @Test
  void workedExampleStepByStep() {
    Map<String, Double> ours = new LinkedHashMap<>();
    double freeAirA = 47; // read off figure 11-4a by the circular
    ours.put("free_air_14_awg_A", freeAirA);
    double altitude = FaaHandbook.altitudeFactor(20_000 * M_PER_FT);
    ours.put("altitude_factor_20000_ft", altitude);
    ours.put("after_altitude_A", altitude * freeAirA);
    ours.put("bundle_factor_8_wires_60pct", FaaHandbook.bundleFactor(8, 0.6));
    ours.put("allowed_A", FaaHandbook.allowed(freeAirA, 20_000 * M_PER_FT, 8, 0.6).currentA());
    // The circular goes on with its rounded 26 A and then 182 °C.
    ours.put("conductor_C", FaaHandbook.conductorC(50, 200, 20, 26));
    ours.put("run_length_ft", FaaHandbook.correctedLength(15.5, 182));
    int compared = 0;
    for (Row row : ReferenceTables.faaWorkedExamples().rows()) {
      double digit = Math.pow(10, -row.number("digits"));
      assertThat(ours.get(row.text("id")))
          .as(row.where())
          .isCloseTo(row.number("printed"), within(digit / 2 + 1e-9));
      compared++;
    }
    assertThat(compared).isEqualTo(ours.size());
  }

  @Test
  void curveReadingsOfTheCircular() {
    for (Row row : ReferenceTables.faaCurveReadings().rows()) {
      double factor = row.number("factor");
      switch (row.text("curve")) {
        case "altitude" -> {
          double feet = Double.parseDouble(row.text("key").replace(" ft", ""));
          assertThat(FaaHandbook.altitudeFactor(feet * M_PER_FT))
              .as(row.where())
              .isCloseTo(factor, within(1e-9));
        }
        case "bundle_8_wires" ->
            assertThat(FaaHandbook.bundleFactor(8, 0.6)).isCloseTo(factor, within(0.005));
        case "bundle_12_wires" ->
            assertThat(FaaHandbook.bundleFactor(12, 1)).isCloseTo(factor, within(0.005));
        // Our points end at 19 wires; beyond them the factor is stricter than the figure.
        case "bundle_35_wires" ->
            assertThat(FaaHandbook.bundleFactor(35, 0.2)).isBetween(0.85 * factor, factor);
        default -> throw new AssertionError(row.where());
      }
    }
  }

  /** AC 43.13-1B Table 11-9, currents and resistances as printed. */
  @Test
  void copperTableIsThePrintedOne() {
    int compared = 0;
    for (Row row : ReferenceTables.faaCopper().rows()) {
      int gauge = row.gauge("awg");
      compared++;
      for (int rating : new int[] {105, 150, 200}) {
        assertThat(FaaCopperTable.currentA(gauge, rating))
            .as(row.where())
            .hasValue(row.number("amps_" + rating + "C"));
      }
      assertThat(FaaCopperTable.ohmPerM20C(gauge).orElseThrow() * 304.8)
          .as(row.where())
          .isCloseTo(row.number("max_ohm_per_1000ft_20C"), within(1e-9));
    }
    assertThat(compared).isEqualTo(FaaCopperTable.gauges().size());
    assertThat(FaaCopperTable.currentA(14, 90)).isEmpty();
    assertThat(FaaCopperTable.currentA(13, 105)).isEmpty();
    assertThat(FaaCopperTable.currentA(14, 130)).hasValue(10);
  }

  /**
   * The table's own conditions by our sums: 33 wires, 20 % loaded, 70 °C, 60 000 ft. The heat
   * balance at sea level times the altitude factor comes within 0.80 to 1.20 of sizes 24 to 10.
   */
  @Test
  void heatBalanceComesNearTheTable() {
    for (int gauge = 24; gauge >= 10; gauge -= 2) {
      for (int rating : new int[] {105, 150, 200}) {
        double seaA =
            WireHeat.current(
                    new WireHeat.Lying(Conductor.awg(gauge), 70, 33, OptionalDouble.of(0.2)),
                    rating)
                .currentA();
        double ours = seaA * FaaHandbook.altitudeFactor(FaaHandbook.HIGHEST_M);
        double table = FaaCopperTable.currentA(gauge, rating).orElseThrow();
        assertThat(ours / table)
            .as(gauge + " AWG " + rating + " °C: " + ours + " against " + table)
            .isBetween(0.80, 1.20);
      }
    }
  }

  @Provide
  Arbitrary<Double> altitudes() {
    return TestConductors.from(0, FaaHandbook.HIGHEST_M);
  }

  @Provide
  Arbitrary<Double> shares() {
    return TestConductors.from(0.01, 1);
  }

  @Property
  void higherFullerAndThickerNeverAllowMore(
      @ForAll("altitudes") double a,
      @ForAll("altitudes") double b,
      @ForAll("shares") double s,
      @ForAll("shares") double u,
      @ForAll @IntRange(min = 1, max = 999) int wires) {
    double low = FaaHandbook.allowed(10, Math.min(a, b), wires, Math.min(s, u)).currentA();
    double high = FaaHandbook.allowed(10, Math.max(a, b), wires + 1, Math.max(s, u)).currentA();
    assertThat(high).isPositive().isLessThanOrEqualTo(low * (1 + 1e-12));
  }

  @Property
  void conductorLiesBetweenAmbientAndRating(
      @ForAll("shares") double s, @ForAll("shares") double u) {
    double cool = FaaHandbook.conductorC(40, 105, Math.min(s, u), 1);
    double hot = FaaHandbook.conductorC(40, 105, Math.max(s, u), 1);
    assertThat(cool).isBetween(40.0, 105.0).isLessThanOrEqualTo(hot);
    // The circular calls its form conservative: a rise with the square of the current is lower.
    assertThat(cool).isGreaterThanOrEqualTo(40 + 65 * Math.pow(Math.min(s, u), 2) - 1e-9);
    assertThat(FaaHandbook.correctedLength(10, hot))
        .isLessThanOrEqualTo(FaaHandbook.correctedLength(10, cool));
  }

  /** The copper row of the run length sum: L2 = 254.5 L1 / (234.5 + T2). */
  @Test
  void runLengthCarriesThePrintedConstants() {
    Row row = ReferenceTables.faaRunLength().rows().get(0);
    assertThat(row.text("metal")).isEqualTo("copper");
    for (double conductorC : new double[] {-60, 20, 105, 182, 300}) {
      assertThat(FaaHandbook.correctedLength(15.5, conductorC))
          .isCloseTo(
              row.number("numerator_C") * 15.5 / (row.number("offset_C") + conductorC),
              within(1e-12));
    }
  }

  /** By hand: 254.5 · 10 / (234.5 + 20) = 10; at 100 °C 254.5·10/334.5 = 7.608. */
  @Test
  void runLengthByHand() {
    assertThat(FaaHandbook.correctedLength(10, 20)).isCloseTo(10, within(1e-12));
    assertThat(FaaHandbook.correctedLength(10, 100))
        .isCloseTo(7.608, Percentage.withPercentage(0.01));
  }

  @Test
  void outOfRangeIsRefusedWithTheRange() {
    assertThatThrownBy(() -> FaaHandbook.altitudeFactor(20_000))
        .isInstanceOf(SumException.class)
        .hasMessage("altitude must be from 0 to 18288 m, but is 20000 m");
    assertThatThrownBy(() -> FaaHandbook.conductorC(50, 105, 12, 10))
        .hasMessageContaining("circuit current must be from 0 to 10 A");
    assertThatThrownBy(() -> FaaHandbook.conductorC(120, 105, 1, 10))
        .hasMessageContaining("conductor rating must be from 120 to 300 °C");
    assertThatThrownBy(() -> FaaHandbook.bundleFactor(0, 1)).hasMessageContaining("1 to 1000");
    assertThatThrownBy(() -> FaaHandbook.correctedLength(1, Double.NaN))
        .hasMessageContaining("conductor temperature");
  }
}
