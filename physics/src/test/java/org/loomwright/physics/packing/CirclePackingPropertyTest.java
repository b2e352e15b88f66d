package org.loomwright.physics.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

final class CirclePackingPropertyTest {
  /** What the search may miss, as a share of the radius. */
  private static final double MISSED = 0.05;

  @Provide
  Arbitrary<List<Double>> wires() {
    return Arbitraries.integers()
        .between(50, 500)
        .map(hundredths -> hundredths / 100.0)
        .list()
        .ofMinSize(1)
        .ofMaxSize(20);
  }

  @Property(tries = 25)
  void isAPackingBetweenItsBoundAndTwiceIt(@ForAll("wires") List<Double> radii) {
    Packing packing = CirclePacking.of(radii);
    assertThat(PackingCheck.problems(packing, radii)).isEmpty();
    assertThat(packing.radiusMm()).isBetween(packing.lowerBoundMm(), 2 * packing.lowerBoundMm());
  }

  @Property(tries = 15)
  void orderDoesNotMatter(@ForAll("wires") List<Double> radii, @ForAll long seed) {
    List<Double> shuffled = new ArrayList<>(radii);
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(CirclePacking.of(shuffled).radiusMm()).isEqualTo(CirclePacking.of(radii).radiusMm());
  }

  @Property(tries = 15)
  void scaleDoesNotMatter(
      @ForAll("wires") List<Double> radii,
      @ForAll @IntRange(min = -3, max = 6) int doublings,
      @ForAll @DoubleRange(min = 0.1, max = 50) double scale) {
    double radius = CirclePacking.of(radii).radiusMm();
    double exact = Math.scalb(1.0, doublings);
    double doubled = CirclePacking.of(radii.stream().map(r -> r * exact).toList()).radiusMm();
    assertThat(doubled / exact).isCloseTo(radius, within(1e-9 * radius));
    // At any other scale the last digits are rounded, and the search may go another way.
    double scaled = CirclePacking.of(radii.stream().map(r -> r * scale).toList()).radiusMm();
    assertThat(scaled / scale).isCloseTo(radius, within(MISSED * radius));
  }

  @Property(tries = 15)
  void oneMoreWireNeverMakesTheBundleThinner(
      @ForAll("wires") List<Double> radii, @ForAll @DoubleRange(min = 0.5, max = 5) double more) {
    Packing before = CirclePacking.of(radii);
    List<Double> with = new ArrayList<>(radii);
    with.add(more);
    Packing after = CirclePacking.of(with);
    assertThat(after.radiusMm()).isGreaterThanOrEqualTo((1 - MISSED) * before.radiusMm());
    assertThat(after.lowerBoundMm()).isGreaterThanOrEqualTo(before.lowerBoundMm() * (1 - 1e-9));
  }
}
