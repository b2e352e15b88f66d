package org.loomwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.loomwright.physics.heat.BundleHeat;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Temperatures of a bundle of forty unlike wires, beside {@link ShellBundle}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BundleBenchmark {
  /** Wires of the bundle. */
  static final int WIRES = 40;

  /** Current of a fully loaded wire, A/mm². */
  static final double PER_MM2 = 3;

  private final BundleHeat.Bundle bundle = MixedBundle.of(WIRES, PER_MM2);

  /** Ours. */
  @Benchmark
  public double ours() {
    return BundleHeat.temperatures(bundle).hottestC();
  }

  /** The plain reference. */
  @Benchmark
  public double shells() {
    return ShellBundle.hottestC(bundle);
  }
}
