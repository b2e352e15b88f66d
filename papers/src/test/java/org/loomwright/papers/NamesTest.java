package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.papers.words.Names;

class NamesTest {
  private final Names names = new Names(SamplePlan.order(), SamplePlan.troubled());

  @Test
  void proseHasNamesWhereTheyAreKnownAndLeavesOtherWordsAlone() {
    String block = names.owner("rear-block");
    assertThat(block).isNotEqualTo("rear-block");
    assertThat(names.prose("two leads want slot rear-block F3"))
        .isEqualTo("two leads want slot F3 of " + block);
    assertThat(
            names.prose("room in rear-block, short-circuit withstand, OV-63-B, heater/rear-block"))
        .isEqualTo("room in " + block + ", short-circuit withstand, OV-63-B, heater/rear-block");
  }

  @Test
  void proseRoundsOnlyWhatNobodyWrote() {
    assertThat(names.prose("0.8333333333333334 of the rating, limit 0.3604 V"))
        .isEqualTo("0.833 of the rating, limit 0.3604 V");
  }

  @Test
  void casesStandInTheirOrder() {
    assertThat(Names.cases(java.util.List.of("A10", "A5", "A4"))).isEqualTo("cases A4, A5, A10");
  }
}
