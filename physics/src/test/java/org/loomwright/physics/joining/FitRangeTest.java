package org.loomwright.physics.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;

final class FitRangeTest {
  @Test
  void theNearerBoundIsShown() {
    Check low = FitRange.check("insulation", 2.3, 2.2, 3.2, "mm", "s");
    assertThat(low.limit()).isEqualTo(2.2);
    assertThat(low.rule()).isEqualTo("from 2.2 to 3.2 mm");
    assertThat(FitRange.check("insulation", 3.1, 2.2, 3.2, "mm", "s").limit()).isEqualTo(3.2);
    assertThatThrownBy(() -> FitRange.check("insulation", 1, 3, 2, "mm", "s"))
        .isInstanceOf(SumException.class)
        .hasMessage("insulation: the largest size, 2 mm, is below the smallest, 3 mm");
  }

  @Property(tries = 500)
  void failsExactlyOutside(
      @ForAll @DoubleRange(min = 0, max = 10) double value,
      @ForAll @DoubleRange(min = 0.1, max = 5) double least,
      @ForAll @DoubleRange(min = 0, max = 5) double width) {
    boolean fits = value >= least && value <= least + width;
    boolean nearABound =
        Math.abs(value / least - 1) < 1e-8 || Math.abs(1 - value / (least + width)) < 1e-8;
    Check check = FitRange.check("v", value, least, least + width, "mm", "s");
    assertThat(check.verdict() != Verdict.FAILS || nearABound).isEqualTo(fits || nearABound);
  }
}
