package org.loomwright.physics.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.Trace;

/** The checker finds faults planted in cuts. */
final class CutCheckTest {
  private static final CuttingStock.Input ORDER =
      new CuttingStock.Input(1000, List.of(new Piece(300, 4), new Piece(90, 2)), 2.5);

  private static List<String> problems(int used, int bound, Pattern... patterns) {
    CuttingStock.Result result =
        new CuttingStock.Result(used, bound, 0, List.of(patterns), Trace.builder().build());
    return CutCheck.problems(ORDER, result);
  }

  private static Pattern once(int long300, int short90) {
    return new Pattern(1, List.of(new Piece(300, long300), new Piece(90, short90)), 0);
  }

  @Test
  void goodCutsHold() {
    assertThat(problems(2, 2, once(3, 1), once(1, 1))).isEmpty();
  }

  @Test
  void aSpoolTooShortIsFound() {
    assertThat(problems(2, 2, once(3, 2), new Pattern(1, List.of(new Piece(300, 1)), 0)))
        .containsExactly("a spool would have to be 1090 mm long");
  }

  @Test
  void missingAndNeedlessPiecesAreFound() {
    assertThat(problems(2, 2, once(3, 1), once(2, 0)))
        .containsExactly(
            "of the pieces of 90 mm 1 are missing", "of the pieces of 300 mm 1 are too many");
  }

  @Test
  void wrongCountsAreFound() {
    assertThat(problems(3, 4, once(3, 1), once(1, 1)))
        .containsExactly(
            "the patterns use 2 spools, not 3", "the lower bound lies above the spools used");
  }
}
