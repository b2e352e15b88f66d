package org.loomwright.physics.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeastSectionTest {
  /** A vehicle maker's body-builder table at 40 °C: fuse, smallest section. */
  @ParameterizedTest
  @CsvSource({
    "5, 0.5",
    "7.5, 0.5",
    "10, 0.85",
    "15, 1.25",
    "20, 2",
    "25, 3",
    "30, 5",
    "40, 8",
    "50, 10",
    "60, 15"
  })
  void saysTheTable(double fuseA, double areaMm2) {
    assertThat(LeastSection.areaMm2(fuseA)).hasValue(areaMm2);
  }

  @Test
  void betweenEntriesTakesTheLargerFuse() {
    assertThat(LeastSection.areaMm2(12)).hasValue(1.25);
    assertThat(LeastSection.areaMm2(2)).hasValue(0.5);
  }

  @Test
  void hasNothingBeyondItsEnd() {
    assertThat(LeastSection.areaMm2(61)).isEmpty();
  }
}
