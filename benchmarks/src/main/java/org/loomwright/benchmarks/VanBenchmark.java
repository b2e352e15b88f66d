package org.loomwright.benchmarks;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.Planner;
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

/** A kit of the demo's van planned from its documents in memory to the proof. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class VanBenchmark {
  /** The kit. */
  @Param({"crew-comfort", "trailer"})
  public String kit = "crew-comfort";

  private Optional<KitOrder> order = Optional.empty();

  /** Reads the demo. */
  @Setup
  public void read() {
    order = Optional.of(DemoKit.order(kit));
  }

  /** Gap, ways, choice, kit, guide and proof. */
  @Benchmark
  public Plan plan() {
    return Planner.plan(order.orElseThrow());
  }
}
