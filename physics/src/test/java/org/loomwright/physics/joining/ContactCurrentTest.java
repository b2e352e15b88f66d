package org.loomwright.physics.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class ContactCurrentTest {
  private static final List<CurrentPoint> TABLE =
      List.of(
          new CurrentPoint(2.5, 25, 20),
          new CurrentPoint(2.5, 65, 16),
          new CurrentPoint(2.5, 105, 0),
          new CurrentPoint(6, 25, 30),
          new CurrentPoint(6, 85, 18));

  private static double limit(double areaMm2, double ambientC) {
    return ContactCurrent.limit("contact T", 28, TABLE, areaMm2, ambientC, "made up").limitA();
  }

  @Test
  void straightBetweenPointsOfTheThickestWireNotAboveOurs() {
    assertThat(limit(2.5, 25)).isEqualTo(20);
    assertThat(limit(4, 45)).isCloseTo(18, within(1e-9));
    assertThat(limit(4, 85)).isCloseTo(8, within(1e-9));
    assertThat(limit(10, 55)).isCloseTo(24, within(1e-9));
  }

  @Test
  void nothingBetterThanTheTableOrThePlainLimit() {
    assertThat(limit(2.5, -40)).isEqualTo(20);
    assertThat(limit(6, 25)).isEqualTo(28);
    assertThat(limit(2.5, 140)).isZero();
    assertThat(ContactCurrent.limit("c", 9, List.of(), 0.5, 90, "s").limitA()).isEqualTo(9);
  }

  @Test
  void refusesWhatTheTableSaysNothingOf() {
    assertThatThrownBy(() -> limit(6, 86))
        .isInstanceOf(SumException.class)
        .hasMessage(
            "the current table of contact T for 6 mm² ends at 85 °C and says nothing of 86 °C;"
                + " take a cooler place, or add a point");
    assertThatThrownBy(() -> limit(1.5, 25))
        .isInstanceOf(SumException.class)
        .hasMessage(
            "the current table of contact T starts at 2.5 mm² and says nothing of 1.5 mm²; take a"
                + " thicker wire, or add a point for this one");
  }

  @Test
  void theTraceEndsWithTheLimitAndShowsBothPoints() {
    ContactCurrent.Result result = ContactCurrent.limit("c", 28, TABLE, 4, 45, "made up");
    assertThat(result.trace().lines())
        .extracting(it -> it.value())
        .containsExactly(4.0, 45.0, 28.0, 2.5, 20.0, 16.0, result.limitA(), result.limitA());
    assertThat(ContactCurrent.check("c", 19, result, 4, 45, "s").verdict())
        .isEqualTo(Verdict.FAILS);
    assertThat(ContactCurrent.check("c", 10, result, 4, 45, "s").rule())
        .isEqualTo("most current with 4 mm² at 45 °C ambient");
  }

  /**
   * Published contact sizes as tables: every wire of a size's range may carry the size's current,
   * and no thinner wire may. Source: heavy-duty contacts by size (from memory), wire ranges from
   * distributors' part descriptions.
   */
  @Test
  void publishedContactsHoldForTheirWiresOnly() {
    Map<String, Double> ratings = new TreeMap<>();
    for (Row row : ReferenceTables.contactCurrents().rows()) {
      ratings.put(row.text("contact"), row.number("max_A"));
    }
    int compared = 0;
    for (Row row : ReferenceTables.terminalWireRanges().rows()) {
      Double ratingA = ratings.get(row.text("size"));
      if (ratingA == null || row.blank("awg_range")) {
        continue;
      }
      String[] range = row.text("awg_range").split("-");
      int thick = Integer.parseInt(range[0]);
      int thin = Integer.parseInt(range[1]);
      List<CurrentPoint> table =
          List.of(new CurrentPoint(Conductor.awg(thin).areaMm2(), 20, ratingA));
      for (int gauge = thick; gauge <= thin; gauge++) {
        double areaMm2 = Conductor.awg(gauge).areaMm2();
        assertThat(ContactCurrent.limit("c", ratingA, table, areaMm2, 20, "s").limitA())
            .as(row.where())
            .isEqualTo(ratingA);
        compared++;
      }
      double thinnerMm2 = Conductor.awg(thin + 1).areaMm2();
      assertThatThrownBy(() -> ContactCurrent.limit("c", ratingA, table, thinnerMm2, 20, "s"))
          .as(row.where())
          .isInstanceOf(SumException.class);
    }
    assertThat(compared).isGreaterThan(10);
  }

  /** Straight lines between points of I = I0 · √((Tm − T) / (Tm − T0)) never allow more than it. */
  @Property(tries = 300)
  void neverAboveACurveOfConstantHeating(
      @ForAll @DoubleRange(min = 5, max = 60) double atTwentyA,
      @ForAll @DoubleRange(min = 100, max = 160) double topC,
      @ForAll @IntRange(min = 2, max = 9) int points,
      @ForAll @DoubleRange(min = 20, max = 180) double ambientC) {
    List<CurrentPoint> table = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double pointC = i == points - 1 ? topC : 20 + (topC - 20) * i / (points - 1);
      table.add(new CurrentPoint(1, pointC, constantHeating(atTwentyA, topC, pointC)));
    }
    double limitA = ContactCurrent.limit("c", 1000, table, 1.5, ambientC, "s").limitA();
    assertThat(limitA).isBetween(0.0, constantHeating(atTwentyA, topC, ambientC) + 1e-9);
  }

  /** Hotter, thinner or fewer points never allow more. */
  @Property(tries = 300)
  void hotterAndThinnerAllowNoMore(
      @ForAll @DoubleRange(min = 2.5, max = 16) double areaMm2,
      @ForAll @DoubleRange(min = -40, max = 85) double ambientC,
      @ForAll @DoubleRange(min = 0, max = 40) double hotterK) {
    double here = limit(areaMm2, ambientC);
    assertThat(limit(2.5, ambientC)).isLessThanOrEqualTo(here + 1e-9);
    if (ambientC + hotterK <= 85) {
      assertThat(limit(areaMm2, ambientC + hotterK)).isLessThanOrEqualTo(here + 1e-9);
    }
  }

  private static double constantHeating(double atTwentyA, double topC, double ambientC) {
    return ambientC >= topC ? 0 : atTwentyA * Math.sqrt((topC - ambientC) / (topC - 20));
  }
}
