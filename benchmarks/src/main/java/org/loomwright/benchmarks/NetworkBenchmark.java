package org.loomwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.NetworkOutcome;
import org.loomwright.physics.network.NetworkSolver;
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

/** One solve of a network of a thousand nodes, from its elements to all voltages and currents. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 8, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(1)
public class NetworkBenchmark {
  /** Nodes of the network. */
  static final int NODES = 1000;

  /** Whether a third of the loads takes a constant power. */
  @Param({"false", "true"})
  public boolean powers;

  private Network network = BigHarness.of(NODES, false);

  /** Makes the network. */
  @Setup
  public void make() {
    network = BigHarness.of(NODES, powers);
  }

  /** Solves it. */
  @Benchmark
  public NetworkOutcome solve() {
    return NetworkSolver.solve(network);
  }
}
