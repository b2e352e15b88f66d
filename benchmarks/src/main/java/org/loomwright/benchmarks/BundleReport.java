package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.loomwright.physics.heat.BundleHeat;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link BundleBenchmark} and prints figures and ratio. */
public final class BundleReport {
  private BundleReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    BundleHeat.Bundle bundle = MixedBundle.of(BundleBenchmark.WIRES, BundleBenchmark.PER_MM2);
    double oursC = BundleHeat.temperatures(bundle).hottestC();
    double shellsC = ShellBundle.hottestC(bundle);
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(BundleBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(name.substring(name.lastIndexOf('.') + 1), run.getPrimaryResult().getScore());
    }
    double ours = ms.getOrDefault("ours", Double.NaN);
    double shells = ms.getOrDefault("shells", Double.NaN);
    System.out.printf(
        Locale.ROOT,
        "%d wires: %.3f ms (%.2f °C), shells %.1f ms (%.2f °C), ratio %.0f%n",
        BundleBenchmark.WIRES,
        ours,
        oursC,
        shells,
        shellsC,
        shells / ours);
  }
}
