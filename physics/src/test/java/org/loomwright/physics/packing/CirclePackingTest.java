package org.loomwright.physics.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class CirclePackingTest {
  private static Packing checked(List<Double> radii) {
    Packing packing = CirclePacking.of(radii);
    assertThat(PackingCheck.problems(packing, radii)).isEmpty();
    return packing;
  }

  /** Graham, Lubachevsky, Nurmela and Östergård 1998 and later records. */
  @Test
  void equalCirclesComeNearTheBestPublishedPackings() {
    for (Row row : ReferenceTables.equalCircles().rows()) {
      int n = (int) row.number("n");
      if (n > 60) {
        continue;
      }
      double published = row.number("ratio_R_over_r");
      Packing packing = checked(Collections.nCopies(n, 1.0));
      assertThat(packing.radiusMm() / published)
          .as(row.where())
          .isBetween(1 - 1e-9, n <= 30 ? 1.01 : 1.02);
      assertThat(packing.lowerBoundMm()).as(row.where()).isLessThanOrEqualTo(published + 1e-9);
    }
  }

  /** Ye, Huang and Lu 2013: radii 1, 2 to n; printed to 1e-8. */
  @Test
  void unequalCirclesComeNearThePublishedPackings() {
    for (Row row : ReferenceTables.unequalCircles().rows()) {
      int n = (int) row.number("n");
      Packing packing = checked(IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList());
      assertThat(packing.radiusMm() / row.number("R"))
          .as(row.where())
          .isBetween(n < 26 ? 1 - 1e-9 : 0.99, 1.02);
      assertThat(packing.lowerBoundMm()).as(row.where()).isLessThan(row.number("R") + 1e-7);
    }
  }

  /** Closed forms: one, two, three that touch each other, and a third that fits beside two. */
  @Test
  void fewCirclesAreExact() {
    assertThat(checked(List.of(1.5)).radiusMm()).isEqualTo(1.5);
    assertThat(checked(List.of(1.0, 2.5)).radiusMm()).isCloseTo(3.5, within(1e-9));
    assertThat(checked(List.of(1.0, 1.0, 1.0)).radiusMm())
        .isCloseTo(1 + 2 / Math.sqrt(3), within(1e-9));
    assertThat(checked(List.of(3.0, 2.0, 0.5)).radiusMm()).isCloseTo(5, within(1e-9));
    // Descartes 1643 for 2, 2 and 3: 1/R = 2 sqrt(7/12) - (1/2 + 1/2 + 1/3).
    double curvature = 2 * Math.sqrt(7 / 12.0) - 4 / 3.0;
    assertThat(checked(List.of(2.0, 3.0, 2.0)).radiusMm()).isCloseTo(1 / curvature, within(1e-8));
  }

  @Test
  void theSameWiresGiveTheSamePlaces() {
    List<Double> radii = List.of(1.05, 1.5, 1.05, 0.8, 0.8, 2.2, 1.3);
    assertThat(CirclePacking.of(radii)).isEqualTo(CirclePacking.of(radii));
  }

  @Test
  void manyWiresAreStillAPacking() {
    List<Double> radii = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      radii.add(0.8 + 0.1 * (i % 7));
    }
    Packing packing = checked(radii);
    assertThat(packing.fill()).isGreaterThan(0.75);
  }

  @Test
  void wrongSizesAreRefused() {
    assertThatThrownBy(() -> CirclePacking.of(List.of()))
        .isInstanceOf(SumException.class)
        .hasMessage("a packing needs 1 to 500 circles, but there are 0");
    assertThatThrownBy(() -> CirclePacking.of(List.of(1.0, 0.0)))
        .hasMessageContaining("above zero, but is 0 mm");
    assertThatThrownBy(() -> CirclePacking.of(List.of(1.0, Double.NaN)))
        .hasMessageContaining("not a number");
    assertThatThrownBy(() -> CirclePacking.of(List.of(5000.0, 1.0)))
        .hasMessageContaining("a thousandth", "5000 mm", "1 mm");
    assertThatThrownBy(() -> CirclePacking.of(Collections.nCopies(501, 1.0)))
        .hasMessageContaining("501");
  }

  @Test
  void theBundleIsTwiceAsWideAsItsRadius() {
    BundleSize.Result result = BundleSize.of(new BundleSize.Input(List.of(4.0, 4.0, 6.0)));
    assertThat(result.diameterMm()).isEqualTo(2 * result.packing().radiusMm());
    assertThat(result.lowerBoundMm()).isCloseTo(result.diameterMm(), within(1e-8));
    assertThat(result.trace().lines()).last().extracting("value").isEqualTo(result.diameterMm());
  }
}
