package org.loomwright.benchmarks;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardLayout;
import org.loomwright.drawing.board.BoardPlan;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link BoardBenchmark} and prints its figures side by side. */
public final class BoardReport {
  private BoardReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    OptionsBuilder options = new OptionsBuilder();
    options.include(BoardBenchmark.class.getName());
    Map<Integer, Map<String, Double>> ms = new TreeMap<>();
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.computeIfAbsent(
              Integer.parseInt(run.getParams().getParam("branches")), any -> new TreeMap<>())
          .put(name.substring(name.lastIndexOf('.') + 1), run.getPrimaryResult().getScore());
    }
    ms.forEach(
        (branches, times) -> {
          BoardPlan plan = BoardLayout.of(GrownTree.of(branches), Board.of(2400, 1200));
          double layout = times.getOrDefault("layout", Double.NaN);
          double eachPair = times.getOrDefault("eachPair", Double.NaN);
          System.out.printf(
              Locale.ROOT,
              "%d branches, %d sheets: layout %.1f ms, drawing %.1f ms, each pair once %.2f ms,"
                  + " ratio %.1f%n",
              branches,
              plan.sheets().size(),
              layout,
              times.getOrDefault("drawing", Double.NaN),
              eachPair,
              layout / eachPair);
        });
  }
}
