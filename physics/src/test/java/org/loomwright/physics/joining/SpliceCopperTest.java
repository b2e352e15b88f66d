package org.loomwright.physics.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.Check;
import org.loomwright.physics.Verdict;

final class SpliceCopperTest {
  private static SpliceCopper.Strand strand(double areaMm2) {
    return new SpliceCopper.Strand("lead", areaMm2);
  }

  private static List<Check> checks(SpliceCopper.Result copper) {
    return SpliceCopper.checks(copper, 2, 8, "sleeve", 0.15, "shop");
  }

  @Test
  void aThinWireAgainstAThickOneFails() {
    SpliceCopper.Result copper = SpliceCopper.of(List.of(strand(0.5)), List.of(strand(6)));
    assertThat(copper.thinnerShare()).isCloseTo(0.5 / 6.5, within(1e-12));
    assertThat(checks(copper))
        .extracting(Check::verdict)
        .containsExactly(Verdict.HOLDS, Verdict.FAILS);
    assertThat(checks(copper).get(1).rule()).isEqualTo("at least 15 % of the copper");
  }

  @Test
  void theSumMustBeWithinTheSleeve() {
    SpliceCopper.Result copper =
        SpliceCopper.of(List.of(strand(4)), List.of(strand(4), strand(0.5)));
    assertThat(copper.totalMm2()).isEqualTo(8.5);
    assertThat(checks(copper).get(0).verdict()).isEqualTo(Verdict.FAILS);
    assertThat(checks(copper).get(0).limit()).isEqualTo(8);
    assertThat(SpliceCopper.of(List.of(strand(1)), List.of()).thinnerShare()).isZero();
  }

  /** Swapping the sides changes nothing, and the trace adds up to the figure. */
  @Property(tries = 300)
  void sidesAreAlike(
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0.35, max = 10) Double> one,
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0.35, max = 10) Double> other) {
    List<SpliceCopper.Strand> a = one.stream().map(SpliceCopperTest::strand).toList();
    List<SpliceCopper.Strand> b = other.stream().map(SpliceCopperTest::strand).toList();
    SpliceCopper.Result copper = SpliceCopper.of(a, b);
    SpliceCopper.Result swapped = SpliceCopper.of(b, a);
    assertThat(swapped.thinnerShare()).isEqualTo(copper.thinnerShare());
    assertThat(copper.thinnerShare()).isBetween(0.0, 0.5);
    double given =
        copper.trace().lines().stream()
            .filter(it -> it.formula().equals("given"))
            .mapToDouble(it -> it.value())
            .sum();
    assertThat(given).isCloseTo(copper.totalMm2(), within(1e-8));
  }
}
