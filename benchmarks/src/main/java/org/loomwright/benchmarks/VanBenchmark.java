package org.loomwright.benchmarks;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.planner.plan.Planner;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The demo's van: one kit planned from its documents to the proof. Run from the project's folder,
 * or give the demo's folder as the property {@code demo}. A further step of the planner is measured
 * by a method beside {@link #plan} that takes the same order.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class VanBenchmark {
  private static final String KIT = "crew-comfort";

  private Optional<KitOrder> order = Optional.empty();

  /** Reads the demo. */
  @Setup
  public void read() {
    Path folder = Path.of(System.getProperty("demo", "demo"));
    Read read = WorkspaceReader.read(folder);
    if (!(read instanceof Read.Good good)) {
      throw new IllegalStateException("the demo at " + folder + " can't be read: " + read);
    }
    if (!(KitOrders.resolve(good.workspace(), KIT) instanceof KitOrders.Found found)) {
      throw new IllegalStateException("the demo at " + folder + " has no kit " + KIT);
    }
    order = Optional.of(found.order());
  }

  /** Gap, ways, choice, kit, guide and proof. */
  @Benchmark
  public Plan plan() {
    return Planner.plan(order.orElseThrow());
  }
}
