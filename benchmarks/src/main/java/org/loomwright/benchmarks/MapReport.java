package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link MapBenchmark} and prints its figures, processor time beside. */
public final class MapReport {
  private MapReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(MapBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(name.substring(name.lastIndexOf('.') + 1), run.getPrimaryResult().getScore());
    }
    MapBenchmark maps = new MapBenchmark();
    System.out.printf(
        Locale.ROOT,
        "%d places, %d leads: marked %.2f ms (%d bytes), laid out %.2f ms (%d bytes), plain %.3f ms"
            + " (%d bytes); processor time %.2f, %.2f, %.3f ms%n",
        MapBenchmark.PLACES,
        MapBenchmark.LEADS,
        ms.getOrDefault("marked", Double.NaN),
        maps.marked().length(),
        ms.getOrDefault("laidOut", Double.NaN),
        maps.laidOut().length(),
        ms.getOrDefault("plain", Double.NaN),
        maps.plain().length(),
        ProcessorTime.ms(20, 50, maps::marked),
        ProcessorTime.ms(20, 50, maps::laidOut),
        ProcessorTime.ms(20, 50, maps::plain));
  }
}
