package org.loomwright.physics.wire;

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
import org.loomwright.physics.TraceLine;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class DropTest {
  private static Drop.Result drop(
      Conductor c, double lengthM, OptionalDouble back, double currentA, double temperatureC) {
    return Drop.of(new Drop.Input(c, lengthM, back, currentA, 12, temperatureC));
  }

  /** AC 43.13-1B Tables 11-7 and 11-8, with the circular's resistance per foot. */
  @Test
  void agreesWithTheExamplesOfTheCircular() {
    for (Row row : ReferenceTables.faaVoltageDrop().rows()) {
      Conductor asPrinted =
          new Conductor(row.text("id"), 1, row.number("ohm_per_ft") / 0.3048, 1, 2, "AC 43.13-1B");
      double dropV =
          drop(
                  asPrinted,
                  row.number("length_ft") * 0.3048,
                  OptionalDouble.empty(),
                  row.number("current_A"),
                  20)
              .dropV();
      assertThat(dropV).as(row.where()).isCloseTo(row.number("correct_drop_V"), within(1e-4));
    }
  }

  /** A cable maker's sum: 5 m of 0.5 mm² at 39 ohm/km and 10 A lose 1.95 V. */
  @Test
  void agreesWithAPublishedSum() {
    Conductor c = new Conductor("0.5 mm²", 0.5, 0.039, 1.1, 1.6, "IEC 60228 class 5");
    Drop.Result result = drop(c, 5, OptionalDouble.empty(), 10, 20);
    assertThat(result.dropV()).isCloseTo(1.95, within(1e-12));
    assertThat(result.dropPercent()).isCloseTo(16.25, within(1e-9));
  }

  /**
   * A marine table of gauges for 3 % drop at 12 V. It reckons with 10.75 ohm·cmil/ft, which is
   * copper at 29.3 °C, and rounds its gauges within 2.5 %. Rows flagged as misprints are left out.
   */
  @Test
  void printedGaugesOfAMarineTableHoldThreePercent() {
    int compared = 0;
    for (Row row : ReferenceTables.marineThreePercent().rows()) {
      if (!row.blank("note")) {
        continue;
      }
      compared++;
      Drop.Result result =
          Drop.of(
              new Drop.Input(
                  Conductor.awg(row.gauge("printed_awg")),
                  row.number("length_ft_round_trip") * 0.3048,
                  OptionalDouble.empty(),
                  row.number("amps"),
                  12,
                  29.3));
      assertThat(result.dropPercent()).as(row.where()).isLessThanOrEqualTo(3.0 * 1.025);
      double cmil = Conductor.awg(row.gauge("printed_awg")).areaMm2() / 5.067075e-4;
      assertThat(result.dropPercent())
          .as(row.where())
          .isCloseTo(3 * row.number("required_cmil") / cmil, Percentage.withPercentage(0.2));
    }
    assertThat(compared).isGreaterThan(50);
  }

  /**
   * AC 43.13-1B Table 11-6 (from memory): the examples of Tables 11-7 and 11-8 are made to use up
   * the continuous drop allowed on their bus. Each drop we reckon lies within the limit of one bus
   * and within 12 % of it.
   */
  @Test
  void theExamplesUseUpTheAllowedDropOfTheCircular() {
    List<Double> limits =
        ReferenceTables.faaAllowedDrop().rows().stream()
            .map(row -> row.number("continuous_drop_V"))
            .toList();
    assertThat(limits).isSorted();
    for (Row row : ReferenceTables.faaAllowedDrop().rows()) {
      assertThat(row.number("intermittent_drop_V"))
          .as(row.where())
          .isEqualTo(2 * row.number("continuous_drop_V"));
    }
    for (Row row : ReferenceTables.faaVoltageDrop().rows()) {
      Conductor asPrinted =
          new Conductor(row.text("id"), 1, row.number("ohm_per_ft") / 0.3048, 1, 2, "AC 43.13-1B");
      double dropV =
          drop(
                  asPrinted,
                  row.number("length_ft") * 0.3048,
                  OptionalDouble.empty(),
                  row.number("current_A"),
                  20)
              .dropV();
      double limitV = limits.stream().filter(v -> v >= dropV).findFirst().orElseThrow();
      assertThat(dropV / limitV).as(row.where()).isBetween(0.88, 1.0);
    }
  }

  /**
   * A marine worked example: pump of 10 A, 21 ft there and back, so the column of 25 ft. The gauge
   * printed for 3 % and for 10 % holds its drop, the next thinner does not.
   */
  @Test
  void marineExamplesGiveTheLeastGauge() {
    for (Row row : ReferenceTables.marineExamples().rows()) {
      int gauge = row.gauge("table_awg");
      for (int thinner = 0; thinner <= 2; thinner += 2) {
        Drop.Result result =
            Drop.of(
                new Drop.Input(
                    Conductor.awg(gauge + thinner),
                    25 * 0.3048,
                    OptionalDouble.empty(),
                    row.number("amps"),
                    row.number("volts"),
                    29.3));
        assertThat(result.dropPercent() <= row.number("drop_pct"))
            .as(row.where() + " with " + (gauge + thinner) + " AWG")
            .isEqualTo(thinner == 0);
      }
    }
  }

  @Test
  void theReturnAddsItsLength() {
    Conductor c = Conductor.metric(2.5);
    double there = drop(c, 4, OptionalDouble.empty(), 10, 20).dropV();
    assertThat(there).isCloseTo(0.00760 * 4 * 10, within(1e-12));
    assertThat(drop(c, 4, OptionalDouble.of(4), 10, 20).dropV())
        .isCloseTo(2 * there, within(1e-12));
    assertThat(drop(c, 4, OptionalDouble.of(0), 10, 20).dropV()).isEqualTo(there);
  }

  @Test
  void theTraceRestatesTheSum() {
    Drop.Result result = drop(Conductor.awg(14), 3, OptionalDouble.of(2), 15, 85);
    TraceLine last = result.trace().lines().get(result.trace().lines().size() - 1);
    assertThat(last.value()).isEqualTo(result.dropPercent());
    assertThat(result.trace().lines()).extracting(TraceLine::value).contains(result.dropV(), 85.0);
    assertThat(result.trace().lines())
        .filteredOn(l -> !l.formula().equals("given"))
        .allSatisfy(l -> assertThat(l.source()).isNotEmpty());
  }

  @Test
  void badInputIsRefused() {
    Conductor c = Conductor.metric(1);
    assertThatThrownBy(() -> drop(c, -1, OptionalDouble.empty(), 1, 20))
        .isInstanceOf(SumException.class)
        .hasMessageContaining("length must not be below zero");
    assertThatThrownBy(() -> drop(c, 1, OptionalDouble.of(-1), 1, 20))
        .hasMessageContaining("return length");
    assertThatThrownBy(() -> drop(c, 1, OptionalDouble.empty(), 1, 2000))
        .hasMessageContaining("conductor temperature must be from -100 to 1083");
    assertThatThrownBy(() -> Drop.of(new Drop.Input(c, 1, OptionalDouble.empty(), 1, 0, 20)))
        .hasMessageContaining("supply voltage must be above zero");
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Double> tenths() {
    return TestConductors.from(0.1, 100);
  }

  @Property
  void growsWithLengthCurrentAndTemperatureAndFallsWithArea(
      @ForAll("conductors") Conductor c,
      @ForAll("tenths") double lengthM,
      @ForAll("tenths") double currentA,
      @ForAll("tenths") double temperatureC) {
    double base = drop(c, lengthM, OptionalDouble.empty(), currentA, temperatureC).dropV();
    assertThat(drop(c, lengthM * 1.1, OptionalDouble.empty(), currentA, temperatureC).dropV())
        .isGreaterThan(base);
    assertThat(drop(c, lengthM, OptionalDouble.empty(), currentA * 1.1, temperatureC).dropV())
        .isGreaterThan(base);
    assertThat(drop(c, lengthM, OptionalDouble.empty(), currentA, temperatureC + 1).dropV())
        .isGreaterThan(base);
    for (Conductor other : Conductor.metricCatalogue()) {
      if (other.ohmPerM20C() < c.ohmPerM20C()) {
        assertThat(drop(other, lengthM, OptionalDouble.empty(), currentA, temperatureC).dropV())
            .isLessThan(base);
      }
    }
  }
}
