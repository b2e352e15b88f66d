package org.loomwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loomwright.physics.packing.CirclePacking;
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

/** The smallest circle round the wires of a bundle, beside {@link PlainPacking}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PackingBenchmark {
  /** Beginnings the plain reference tries. */
  static final int SCATTERS = 20;

  /** Wires of the bundle. */
  @Param({"10", "40", "60"})
  public int wires = 10;

  private List<Double> radiiMm = List.of();

  /** Makes the bundle. */
  @Setup
  public void bundle() {
    radiiMm = PlainPacking.bundle(wires);
  }

  /** Ours. */
  @Benchmark
  public double ours() {
    return CirclePacking.of(radiiMm).radiusMm();
  }

  /** The plain reference. */
  @Benchmark
  public double plain() {
    return PlainPacking.radiusMm(radiiMm, SCATTERS);
  }
}
