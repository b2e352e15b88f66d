package org.loomwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardChecker;
import org.loomwright.drawing.board.BoardLayout;
import org.loomwright.drawing.board.BoardPlan;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.BoardTree;
import org.loomwright.drawing.board.BoardWords;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A tree laid on a board of 2400 mm by 1200 mm and drawn, beside one look at each pair of things on
 * the finished board, which the layout has to take many times.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BoardBenchmark {
  private static final Board BOARD = Board.of(2400, 1200);

  /** Branches of the tree. */
  @Param({"10", "30", "60"})
  public int branches;

  private BoardTree tree = GrownTree.of(1);
  private BoardPlan plan = BoardLayout.of(tree, BOARD);

  /** Makes the tree of the wanted size. */
  @Setup
  public void grow() {
    tree = GrownTree.of(branches);
    plan = BoardLayout.of(tree, BOARD);
  }

  /** From the tree to the plan of the board. */
  @Benchmark
  public BoardPlan layout() {
    return BoardLayout.of(tree, BOARD);
  }

  /** From the plan to the drawing of its first sheet, all texts placed. */
  @Benchmark
  public String drawing() {
    return BoardSvg.document(plan, plan.sheets().get(0), BoardWords.NONE);
  }

  /** The plain reference: each pair of things looked at once. */
  @Benchmark
  public List<String> eachPair() {
    return BoardChecker.check(tree, plan);
  }
}
