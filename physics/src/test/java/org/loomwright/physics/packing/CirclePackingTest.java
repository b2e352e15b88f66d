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

  /** Graham, Lubachevsky, Nurmela and Östergård 1998 and later records; every count to 60. */
  @Test
  void equalCirclesComeNearTheBestPublishedPackings() {
    List<Integer> counts = new ArrayList<>();
    for (Row row : ReferenceTables.equalCircles().rows()) {
      int n = (int) row.number("n");
      if (n > 60) {
        continue;
      }
      counts.add(n);
      double published = row.number("ratio_R_over_r");
      BundleSize.Result bundle = bundle(Collections.nCopies(n, 1.0));
      assertThat(bundle.diameterMm() / 2 / published)
          .as(row.where())
          .isBetween(1 - 1e-9, n <= 30 ? 1.01 : 1.02);
      assertThat(bundle.lowerBoundMm() / 2)
          .as(row.where())
          .isBetween(Math.sqrt(n), published + 1e-9);
    }
    assertThat(counts).containsExactlyElementsOf(IntStream.rangeClosed(1, 60).boxed().toList());
  }

  /** Ye, Huang and Lu 2013: radii 1, 2 to n; every count from 5 to 50; printed to 1e-8. */
  @Test
  void unequalCirclesComeNearThePublishedPackings() {
    List<Integer> counts = new ArrayList<>();
    for (Row row : ReferenceTables.unequalCircles().rows()) {
      int n = (int) row.number("n");
      counts.add(n);
      BundleSize.Result bundle =
          bundle(IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList());
      assertThat(bundle.diameterMm() / 2 / row.number("R"))
          .as(row.where())
          .isBetween(n < 26 ? 1 - 1e-9 : 0.99, 1.02);
      assertThat(bundle.lowerBoundMm() / 2).as(row.where()).isLessThan(row.number("R") + 1e-7);
    }
    assertThat(counts).containsExactlyElementsOf(IntStream.rangeClosed(5, 50).boxed().toList());
  }

  /** The bundle as the product asks for it, with circles of these radii, checked afresh. */
  private static BundleSize.Result bundle(List<Double> radii) {
    BundleSize.Result result =
        BundleSize.of(new BundleSize.Input(radii.stream().map(r -> 2 * r).toList()));
    assertThat(PackingCheck.problems(result.packing(), radii)).isEmpty();
    return result;
  }

  /** The thin ones lie round the thick one; its place in the order is kept. */
  @Test
  void oneThickWireWithManyThinOnes() {
    List<Double> radii = new ArrayList<>(Collections.nCopies(39, 0.7));
    radii.add(17, 6.0);
    Packing packing = checked(radii);
    assertThat(packing.circles().get(17).radiusMm()).isEqualTo(6);
    // 30 go round it; a second layer in their hollows ends at 6.7 cos(π/30) + 0.7 √3 + 0.7.
    assertThat(packing.radiusMm()).isBetween(packing.lowerBoundMm(), 8.58);
  }

  @Test
  void wiresThatFitTheGapsDoNotWidenTheBundle() {
    double seven = checked(Collections.nCopies(7, 1.0)).radiusMm();
    assertThat(seven).isCloseTo(3, within(1e-8));
    // Between three that touch each other lies room for r = 2/√3 − 1 = 0.1547.
    List<Double> withThin = new ArrayList<>(Collections.nCopies(7, 1.0));
    withThin.addAll(Collections.nCopies(6, 0.15));
    assertThat(checked(withThin).radiusMm()).isCloseTo(3, within(1e-6));
  }

  /** Outside diameters of thin-wall wires of 0.35 to 6 mm² as a harness mixes them (made up). */
  @Test
  void mixedWiresOfAHarnessFillMostOfTheBundle() {
    double[] diametersMm = {1.4, 1.6, 1.9, 2.1, 2.4, 3.0, 3.7, 4.3};
    for (int wires : new int[] {2, 3, 5, 8, 12, 20, 40, 60}) {
      List<Double> radii = new ArrayList<>();
      for (int i = 0; i < wires; i++) {
        radii.add(diametersMm[(i * i + i / 3) % diametersMm.length] / 2);
      }
      Packing packing = checked(radii);
      assertThat(packing.radiusMm()).isGreaterThanOrEqualTo(packing.lowerBoundMm());
      assertThat(packing.fill()).as(wires + " wires").isGreaterThan(wires < 12 ? 0.5 : 0.76);
    }
  }

  @Test
  void theOrderOfTheWiresChangesOnlyTheOrderOfTheirPlaces() {
    List<Double> radii = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      radii.add(0.8 + 0.07 * (i * 7 % 31));
    }
    Packing packing = checked(radii);
    List<Double> reversed = new ArrayList<>(radii);
    Collections.reverse(reversed);
    Packing other = checked(reversed);
    assertThat(other.radiusMm()).isEqualTo(packing.radiusMm());
    assertThat(other.circles()).containsExactlyInAnyOrderElementsOf(packing.circles());
  }

  /** The circle round the origin cannot be drawn smaller: wires touch it on all sides. */
  @Test
  void theOriginIsTheCentreOfTheSmallestCircle() {
    for (List<Double> radii :
        List.of(
            List.of(1.5),
            List.of(1.0, 2.5),
            List.of(2.0, 2.0, 3.0),
            Collections.nCopies(19, 1.0),
            IntStream.rangeClosed(1, 20).mapToObj(i -> (double) i).toList())) {
      Packing packing = checked(radii);
      assertThat(widestGap(packing)).as(radii.toString()).isLessThanOrEqualTo(Math.PI + 1e-3);
    }
  }

  /** Widest angle between neighbouring circles that touch the outer one. */
  private static double widestGap(Packing packing) {
    double touch = packing.radiusMm() * (1 - 1e-5);
    double[] angles =
        packing.circles().stream()
            .filter(c -> Math.hypot(c.xMm(), c.yMm()) + c.radiusMm() >= touch)
            .filter(c -> c.radiusMm() < touch)
            .mapToDouble(c -> Math.atan2(c.yMm(), c.xMm()))
            .sorted()
            .toArray();
    double widest = angles.length == 0 ? 0 : angles[0] + 2 * Math.PI - angles[angles.length - 1];
    for (int i = 1; i < angles.length; i++) {
      widest = Math.max(widest, angles[i] - angles[i - 1]);
    }
    return widest;
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
