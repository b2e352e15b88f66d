package org.loomwright.benchmarks;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.Vehicle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A run map of 12 places and 40 leads, beside {@link PlainMap}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MapBenchmark {
  /** Places of the vehicle. */
  static final int PLACES = 12;

  /** Leads of the kit. */
  static final int LEADS = 40;

  private static final double WIDTH_MM = 175;

  private final Vehicle marked = BigKit.vehicle(PLACES, true);
  private final Vehicle unmarked = BigKit.vehicle(PLACES, false);
  private final Plan plan = BigKit.plan(PLACES, LEADS);

  /** Places where they are marked. */
  @Benchmark
  public String marked() {
    return map(marked);
  }

  /** Places laid out. */
  @Benchmark
  public String laidOut() {
    return map(unmarked);
  }

  /** The plain reference. */
  @Benchmark
  public String plain() {
    return PlainMap.svg(plan, unmarked);
  }

  private String map(Vehicle vehicle) {
    return RunMap.svg(plan, vehicle, Optional.empty(), WIDTH_MM, Lettering.fitted());
  }
}
