package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomwright.planner.kit.SizingBenchmark;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link SizingBenchmark} and {@link VanBenchmark} and prints figures and ratio. */
public final class VanReport {
  private static final List<String> KITS = List.of("crew-comfort", "trailer");

  private VanReport() {}

  /** Needs no arguments; the demo is looked for in the folder it is run from. */
  public static void main(String[] args) throws RunnerException {
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(SizingBenchmark.class.getName()).include(VanBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(
          run.getParams().getParam("kit") + name.substring(name.lastIndexOf('.')),
          run.getPrimaryResult().getScore());
    }
    for (String kit : KITS) {
      double ours = ms.getOrDefault(kit + ".sizing", Double.NaN);
      double plain = ms.getOrDefault(kit + ".plainSizing", Double.NaN);
      System.out.printf(
          Locale.ROOT,
          "%s: sizing %.1f ms, plainly %.0f ms, ratio %.0f (%s); %s; whole plan %.0f ms%n",
          kit,
          ours,
          plain,
          plain / ours,
          SizingBenchmark.ends(kit),
          SizingBenchmark.processorTime(kit),
          ms.getOrDefault(kit + ".plan", Double.NaN));
    }
  }
}
