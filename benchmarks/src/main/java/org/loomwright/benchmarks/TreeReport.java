package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.loomwright.planner.tree.FoundTree;
import org.loomwright.planner.tree.Link;
import org.loomwright.planner.tree.TreeFinder;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link TreeBenchmark} and prints figures and ratios. */
public final class TreeReport {
  private TreeReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(TreeBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(
          name.substring(name.lastIndexOf('.') + 1) + run.getParams().getParam("joined"),
          run.getPrimaryResult().getScore());
    }
    List<Link> links = RunGraph.of(TreeBenchmark.PLACES, TreeBenchmark.RUNS);
    for (int joined : List.of(12, 20)) {
      Set<String> ends = RunGraph.joined(TreeBenchmark.PLACES, joined);
      FoundTree tree = TreeFinder.of(links).joining(ends).orElseThrow();
      double closure = RunGraph.closureCost(links, ends);
      double oursMs = ms.getOrDefault("ours" + joined, Double.NaN);
      double closureMs = ms.getOrDefault("closure" + joined, Double.NaN);
      System.out.printf(
          Locale.ROOT,
          "%d of %d places over %d runs: %.2f ms, costs %.0f, least %.0f (%s); plain closure %.2f"
              + " ms, costs %.0f; time ratio %.2f, cost ratio %.4f%n",
          joined,
          TreeBenchmark.PLACES,
          links.size(),
          oursMs,
          tree.cost(),
          tree.leastCost(),
          tree.exact() ? "exact" : "bound",
          closureMs,
          closure,
          oursMs / closureMs,
          tree.cost() / closure);
    }
  }
}
