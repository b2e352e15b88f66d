package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class HandbookAmpacityTest {
  private static double allowed(Conductor c, double rating, double ambient, int wires) {
    return HandbookAmpacity.of(
            new HandbookAmpacity.Input(c, rating, ambient, wires, OptionalDouble.empty()))
        .currentA()
        .orElseThrow();
  }

  private static double loaded(Conductor c, double rating, double ambient, int wires, double s) {
    return HandbookAmpacity.of(
            new HandbookAmpacity.Input(c, rating, ambient, wires, OptionalDouble.of(s)))
        .currentA()
        .orElseThrow();
  }

  /** 33 CFR 183.425 Table 5, every cell. */
  @Test
  void givesEveryCellOfTheTable() {
    for (Row row : ReferenceTables.cfrAmpacity().rows()) {
      for (int rating : HandbookTable.RATING_C) {
        assertThat(allowed(Conductor.awg(row.gauge("awg")), rating, 30, 1))
            .as(row.where() + " at " + rating)
            .isCloseTo(row.number("t" + rating + "C_A"), within(1e-9));
      }
    }
  }

  /**
   * Note 1 (50 °C): the table's factors and the square root form agree within 0.01, save the 200 °C
   * column, where the table gives 1.00 and the form 0.94.
   */
  @Test
  void engineSpaceNoteAgreesWithTheSquareRoot() {
    int compared = 0;
    for (Row row : ReferenceTables.cfrNotes().rows()) {
      if (!row.text("factor_kind").startsWith("engine_space")) {
        continue;
      }
      int column = HandbookTable.columnFor(row.number("key"));
      assertThat(HandbookTable.ENGINE_SPACE_FACTOR[column]).isEqualTo(row.number("factor"));
      double slack = row.number("key") == 200 ? 0.07 : 0.01;
      assertThat(HandbookAmpacity.ambientFactor(row.number("key"), 50))
          .as(row.where())
          .isCloseTo(row.number("factor"), within(slack))
          .isLessThanOrEqualTo(row.number("factor") + 0.01);
      compared++;
    }
    assertThat(compared).isEqualTo(HandbookTable.RATING_C.length);
  }

  /** Note 2, every printed row at both of its ends. */
  @Test
  void bundleNoteIsThePrintedOne() {
    int compared = 0;
    for (Row row : ReferenceTables.cfrNotes().rows()) {
      if (row.text("factor_kind").startsWith("bundle")) {
        compared++;
        for (String end : row.text("key").split("[-+]")) {
          assertThat(HandbookTable.bundleFactor(Integer.parseInt(end)))
              .as(row.where())
              .isEqualTo(row.number("factor"));
        }
      }
    }
    assertThat(compared).isEqualTo(5);
  }

  /** Note 2, bundle factors. */
  @ParameterizedTest
  @CsvSource({
    "1, 1.0",
    "2, 1.0",
    "3, 0.7",
    "4, 0.6",
    "6, 0.6",
    "7, 0.5",
    "24, 0.5",
    "25, 0.4",
    "100, 0.4"
  })
  void bundleNote(int wires, double factor) {
    assertThat(allowed(Conductor.awg(14), 105, 30, wires)).isCloseTo(35 * factor, within(1e-9));
  }

  /** MIL-W-5088L: every read point. */
  @Test
  void givesEveryPointOfTheBundleCurves() {
    for (Row row : ReferenceTables.bundleCurves().rows()) {
      for (int load = 20; load <= 100; load += 20) {
        assertThat(BundleCurves.factor((int) row.number("wires"), load / 100.0))
            .as(row.where())
            .isCloseTo(row.number("load" + load + "pct"), within(1e-12));
      }
    }
  }

  /**
   * AC 43.13-1B reads its own curves: 8 wires at 60 % give 0.6; 12 at 100 % give 0.43; 35 at 20 %
   * give 0.52, of which ours is the cautious side.
   */
  @Test
  void agreesWithTheReadingsOfTheCircular() {
    assertThat(BundleCurves.factor(8, 0.6)).isCloseTo(0.6, within(0.01));
    assertThat(BundleCurves.factor(12, 1.0)).isCloseTo(0.43, within(0.005));
    assertThat(BundleCurves.factor(35, 0.2)).isBetween(0.40, 0.52);
  }

  /** By hand: 14 AWG, 105 °C, 60 °C ambient: 35 A √(45/75) = 27.11 A. */
  @Test
  void ambientByTheSquareRoot() {
    assertThat(allowed(Conductor.awg(14), 105, 60, 1))
        .isCloseTo(35 * Math.sqrt(45.0 / 75), within(1e-9));
    assertThat(loaded(Conductor.awg(14), 105, 60, 8, 0.6))
        .isCloseTo(35 * Math.sqrt(45.0 / 75) * 0.6, within(1e-9));
    assertThat(allowed(Conductor.awg(14), 105, 105, 1)).isZero();
    assertThat(allowed(Conductor.awg(14), 105, 120, 1)).isZero();
  }

  @Test
  void sizesAndRatingsBetweenTakeTheNextLower() {
    assertThat(allowed(Conductor.metric(2.5), 105, 30, 1)).isEqualTo(35); // 14 AWG
    assertThat(allowed(Conductor.metric(2), 105, 30, 1)).isEqualTo(25); // 16 AWG
    assertThat(allowed(Conductor.metric(120), 105, 30, 1)).isEqualTo(445); // 4/0
    assertThat(allowed(Conductor.awg(5), 105, 30, 1)).isEqualTo(120); // 6 AWG
    assertThat(allowed(Conductor.awg(14), 124, 30, 1)).isEqualTo(35);
    assertThat(allowed(Conductor.awg(14), 150, 30, 1)).isEqualTo(40);
    assertThat(allowed(Conductor.awg(14), 260, 30, 1)).isEqualTo(45);
  }

  @Test
  void outsideTheTableThereIsAReasonInsteadOfAValue() {
    HandbookAmpacity.Result thin =
        HandbookAmpacity.of(
            new HandbookAmpacity.Input(Conductor.metric(0.75), 105, 30, 1, OptionalDouble.empty()));
    assertThat(thin.currentA()).isEmpty();
    assertThat(thin.whyNone()).contains("33 CFR 183.425 Table 5 starts at 18 AWG (0.823 mm²)");
    HandbookAmpacity.Result soft =
        HandbookAmpacity.of(
            new HandbookAmpacity.Input(Conductor.awg(14), 50, 30, 1, OptionalDouble.empty()));
    assertThat(soft.currentA()).isEmpty();
    assertThat(soft.whyNone().orElseThrow()).contains("60 °C");
  }

  @Test
  void theSmallerMethodCounts() {
    for (Conductor c : Conductor.awgCatalogue()) {
      Ampacity.Result both = Ampacity.of(Ampacity.Input.single(c, 105, 40));
      assertThat(both.allowedA())
          .isEqualTo(Math.min(both.handbookA().orElse(Double.MAX_VALUE), both.heatBalanceA()));
      assertThat(both.allowedA()).isPositive();
      assertThat(both.handbookA().isPresent()).isNotEqualTo(both.whyNoHandbook().isPresent());
    }
    Ampacity.Result none = Ampacity.of(Ampacity.Input.single(Conductor.awg(14), 105, 105));
    assertThat(none.allowedA()).isZero();
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> allowed(Conductor.awg(14), 105, 30, 0))
        .hasMessageContaining("number of wires must be from 1");
    assertThatThrownBy(() -> allowed(Conductor.awg(14), 1050, 30, 1))
        .hasMessageContaining("insulation rating must be from 40 to 300 °C");
    assertThatThrownBy(() -> loaded(Conductor.awg(14), 105, 30, 2, 60))
        .hasMessageContaining("loaded share must be from");
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any().filter(c -> c.areaMm2() > 0.9);
  }

  @Provide
  Arbitrary<Double> ambients() {
    return TestConductors.from(-20, 130);
  }

  @Provide
  Arbitrary<Double> shares() {
    return TestConductors.from(0.02, 1);
  }

  @Property
  void fallsWithAmbientNeighboursAndLoad(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll @IntRange(min = 1, max = 80) int wires,
      @ForAll("shares") double share) {
    double base = loaded(c, 125, ambientC, wires, share);
    assertThat(loaded(c, 125, ambientC + 5, wires, share)).isLessThanOrEqualTo(base);
    assertThat(loaded(c, 125, ambientC, wires + 1, share)).isLessThanOrEqualTo(base);
    assertThat(loaded(c, 125, ambientC, wires, Math.min(1, share + 0.1)))
        .isLessThanOrEqualTo(base * (1 + 1e-12));
    assertThat(base).isLessThanOrEqualTo(loaded(c, 125, ambientC, 1, share));
    assertThat(allowed(c, 125, ambientC, wires + 1))
        .isLessThanOrEqualTo(allowed(c, 125, ambientC, wires));
  }
}
