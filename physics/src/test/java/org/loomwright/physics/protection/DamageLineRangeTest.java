package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.wire.Conductor;

/** The damage line over the whole stated range: positive times, falling with the current. */
final class DamageLineRangeTest {
  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  @Provide
  Arbitrary<Insulation> insulations() {
    return Arbitraries.of(Insulation.values());
  }

  @Provide
  Arbitrary<Double> shares() {
    return TestConductors.from(0, 1);
  }

  @Property(tries = 120)
  void timesArePositiveAndFall(
      @ForAll("conductors") Conductor c,
      @ForAll("insulations") Insulation insulation,
      @ForAll("shares") double ambientShare,
      @ForAll("shares") double ratingShare,
      @ForAll("shares") double startShare,
      @ForAll @IntRange(min = 1, max = 60) int wires) {
    double ambientC = -60 + ambientShare * (Math.min(250, insulation.finalC() - 5) + 60);
    // Rounding must not carry a share of 1 beyond the end of the range.
    double ratingC =
        Math.min(
            insulation.finalC() - 1,
            ambientC + 1 + ratingShare * (insulation.finalC() - 2 - ambientC));
    double startC = ambientC + startShare * (ratingC - ambientC);
    DamageLine line =
        DamageLine.of(
            new DamageLine.Wire(
                new WireHeat.Lying(c, ambientC, wires, OptionalDouble.empty()),
                insulation,
                ratingC,
                Math.min(startC, ratingC)));
    double before = Double.POSITIVE_INFINITY;
    for (double currentA = 0.01; currentA <= 100_000; currentA *= 3) {
      double timeS = line.timeS(currentA);
      assertThat(timeS).isPositive().isLessThanOrEqualTo(before);
      before = timeS;
    }
    assertThat(before).isFinite();
  }
}
