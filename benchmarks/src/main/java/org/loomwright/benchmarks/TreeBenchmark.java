package org.loomwright.benchmarks;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.loomwright.planner.tree.FoundTree;
import org.loomwright.planner.tree.Link;
import org.loomwright.planner.tree.TreeFinder;
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
 * A tree over places of a run graph, beside the plain metric closure method of JGraphT. Twelve
 * places are few enough for the exact sum; twenty are only where the graph falls into parts.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TreeBenchmark {
  /** Places of the run graph. */
  static final int PLACES = 40;

  /** Runs between them. */
  static final int RUNS = 70;

  /** How many places are joined. */
  @Param({"12", "20"})
  int joined;

  private List<Link> links = List.of();
  private Set<String> ends = Set.of();

  /** Draws the graph. */
  @Setup
  public void draw() {
    links = RunGraph.of(PLACES, RUNS);
    ends = RunGraph.joined(PLACES, joined);
  }

  /** Ours. */
  @Benchmark
  public double ours() {
    return TreeFinder.of(links).joining(ends).map(FoundTree::cost).orElse(Double.NaN);
  }

  /** The plain reference. */
  @Benchmark
  public double closure() {
    return RunGraph.closureCost(links, ends);
  }
}
