package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** Random trees on random boards: what is laid is right, on one sheet or on several. */
class BoardLayoutPropertyTest {

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
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
}
