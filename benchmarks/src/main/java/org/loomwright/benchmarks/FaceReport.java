package org.loomwright.benchmarks;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import org.loomwright.drawing.FaceWords;
import org.loomwright.model.parts.Housing;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs {@link FaceBenchmark} and prints figures and ratio. */
public final class FaceReport {
  private FaceReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException {
    Housing housing = FortyWay.housing();
    Map<String, String> words = FaceWords.positions(housing, FaceBenchmark.WIRE_UP);
    Map<String, String> plain = PlainWords.of(housing);
    Map<String, Double> ms = new HashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.include(FaceBenchmark.class.getName());
    for (RunResult run : new Runner(options.build()).run()) {
      String name = run.getParams().getBenchmark();
      ms.put(name.substring(name.lastIndexOf('.') + 1), run.getPrimaryResult().getScore());
    }
    double ours = ms.getOrDefault("words", Double.NaN);
    double plains = ms.getOrDefault("plainWords", Double.NaN);
    System.out.printf(
        Locale.ROOT,
        "%d cavities: picture %.3f ms; words %.3f ms (%d different), plain words %.3f ms (%d"
            + " different), ratio %.2f%n",
        FortyWay.CAVITIES,
        ms.getOrDefault("picture", Double.NaN),
        ours,
        new HashSet<>(words.values()).size(),
        plains,
        new HashSet<>(plain.values()).size(),
        plains / ours);
  }
}
