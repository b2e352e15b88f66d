package org.loomwright.planner.kit;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.loomwright.benchmarks.DemoKit;
import org.loomwright.benchmarks.ProcessorTime;
import org.loomwright.model.parts.Wire;
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

/** The wires of a demo kit over all its cases, beside {@link PlainSizing}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SizingBenchmark {
  /** The kit. */
  @Param({"crew-comfort", "trailer"})
  public String kit = "crew-comfort";

  private Optional<PreparedKit> prepared = Optional.empty();

  /** Everything up to the search for the wires. */
  @Setup
  public void prepare() {
    prepared = Optional.of(PreparedKit.of(DemoKit.order(kit)));
  }

  /** Ours. */
  @Benchmark
  public int sizing() {
    return prepared.orElseThrow().sized().wires().size();
  }

  /** The plain reference. */
  @Benchmark
  public int plainSizing() {
    return new PlainSizing(prepared.orElseThrow()).wires().size();
  }

  /** Processor time of both, one right after the other, in words. */
  public static String processorTime(String kit) {
    PreparedKit prepared = PreparedKit.of(DemoKit.order(kit));
    double ours = ProcessorTime.ms(25, 20, prepared::sized);
    double plain = ProcessorTime.ms(2, 2, () -> new PlainSizing(prepared).wires());
    return String.format(
        Locale.ROOT,
        "processor time of the sizing %.1f ms, plainly %.0f ms, ratio %.0f",
        ours,
        plain,
        plain / ours);
  }

  /** What both end with, in words. */
  public static String ends(String kit) {
    PreparedKit prepared = PreparedKit.of(DemoKit.order(kit));
    Map<Strand, Wire> ours = prepared.sized().wires();
    PlainSizing plain = new PlainSizing(prepared);
    Map<Strand, Wire> theirs = plain.wires();
    long same =
        prepared.strands().stream()
            .filter(
                it -> Optional.ofNullable(ours.get(it)).equals(Optional.ofNullable(theirs.get(it))))
            .count();
    return "%d leads, %d networks, %d leads in the same wire; copper %.2f and %.2f mm² m, plainly after solving the kit %d times"
        .formatted(
            ours.size(),
            prepared.joint().all().size(),
            same,
            prepared.copper(ours),
            prepared.copper(theirs),
            plain.solved());
  }
}
