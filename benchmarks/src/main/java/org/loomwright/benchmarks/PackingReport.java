package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomwright.physics.packing.CirclePacking;
import org.loomwright.physics.packing.Packing;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link PackingBenchmark} and prints figures and ratios of time and of radius. */
public final class PackingReport {
  private static final List<Integer> WIRES = List.of(10, 40, 60);
  private static final int WARM_UP = 10;
  private static final int RUNS = 20;

  private PackingReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(PackingBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(
          run.getParams().getParam("wires") + name.substring(name.lastIndexOf('.')),
          run.getPrimaryResult().getScore());
    }
    for (int wires : WIRES) {
      List<Double> radiiMm = PlainPacking.bundle(wires);
      Packing packing = CirclePacking.of(radiiMm);
      double plainMm = PlainPacking.radiusMm(radiiMm, PackingBenchmark.SCATTERS);
      double ours = ms.getOrDefault(wires + ".ours", Double.NaN);
      double plain = ms.getOrDefault(wires + ".plain", Double.NaN);
      System.out.printf(
          Locale.ROOT,
          "%d wires: %.1f ms (%.1f ms on the processor), plainly %.0f ms, ratio %.1f;"
              + " radius %.3f mm, plainly %.3f mm, ratio %.4f; filled %.3f%n",
          wires,
          ours,
          ProcessorTime.ms(WARM_UP, RUNS, () -> CirclePacking.of(radiiMm)),
          plain,
          plain / ours,
          packing.radiusMm(),
          plainMm,
          plainMm / packing.radiusMm(),
          packing.fill());
    }
  }
}
