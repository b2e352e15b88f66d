package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/** Random trees on random boards: what is laid is right, on one sheet or on several. */
class BoardLayoutPropertyTest {

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void everyPlanPassesTheChecker(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 60) int branches,
      @ForAll @DoubleRange(min = 1200, max = 3000) double widthMm,
      @ForAll @DoubleRange(min = 800, max = 1500) double heightMm) {
    BoardTree tree = Trees.random(seed, branches);
    BoardPlan plan = BoardLayout.of(tree, Board.of(widthMm, heightMm));

    assertThat(BoardChecker.check(tree, plan)).as(tree.name()).isEmpty();
    Statistics.label("sheets").collect(Math.min(6, plan.sheets().size()));
  }

  /** As many branches as are promised, not only as many as the lot gives. */
  @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
  void sixtyBranchesToo(@ForAll long seed) {
    BoardTree tree = Trees.random(seed, 60);
    BoardPlan plan = BoardLayout.of(tree, Board.of(2400, 1200));

    assertThat(tree.branches()).hasSize(60);
    assertThat(BoardChecker.check(tree, plan)).as(tree.name()).isEmpty();
  }

  @Property(tries = 15, edgeCases = EdgeCasesMode.NONE)
  void smallBoardsAndOtherRulesToo(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 25) int branches,
      @ForAll @DoubleRange(min = 250, max = 1100) double widthMm,
      @ForAll @DoubleRange(min = 250, max = 900) double heightMm,
      @ForAll @DoubleRange(min = 0, max = 25) double marginMm,
      @ForAll @DoubleRange(min = 5, max = 25) double clearanceMm,
      @ForAll @DoubleRange(min = 1, max = 9) double bendRatio) {
    BoardTree tree = Trees.random(seed, branches);
    Board board = new Board(widthMm, heightMm, marginMm, clearanceMm, bendRatio);

    assertThat(BoardChecker.check(tree, BoardLayout.of(tree, board))).as(tree.name()).isEmpty();
  }

  /** Each was laid wrong once: a very short straight part within a bend. */
  @Test
  void casesThatOnceWentWrong() {
    BoardTree first = Trees.random(-2466560979546091243L, 28);
    Board tall = new Board(378.77352665553747, 840.2616149586913, 8, 15, 4);
    BoardTree second = Trees.random(-3086198962003493197L, 13);
    Board flat = new Board(700.1574136954966, 438.6759232544984, 21, 23, 6);

    assertThat(BoardChecker.check(first, BoardLayout.of(first, tall))).isEmpty();
    assertThat(BoardChecker.check(second, BoardLayout.of(second, flat))).isEmpty();
  }
}
