package org.loomwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Element;
import org.loomwright.physics.network.Link;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.Source;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs {@link NetworkBenchmark} and the same networks in ngspice and prints both with their ratio.
 * The simulator's time is that of its process with the network and its operating point, less that
 * of its process with a network of one resistor; the median of several rounds.
 */
public final class NetworkReport {
  private static final int ROUNDS = 15;

  private NetworkReport() {}

  /** Needs no arguments. */
  public static void main(String[] args) throws RunnerException, IOException, InterruptedException {
    Path folder = Files.createTempDirectory("benchmark");
    double idleMs = medianMs(folder, "one resistor\nR1 a 0 1\nI1 0 a 1\n.op\n.end\n");
    StringBuilder report = new StringBuilder();
    for (RunResult run :
        new Runner(new OptionsBuilder().include(NetworkBenchmark.class.getName()).build()).run()) {
      boolean powers = Boolean.parseBoolean(run.getParams().getParam("powers"));
      double oursMs = run.getPrimaryResult().getScore();
      Network network = BigHarness.of(NetworkBenchmark.NODES, powers);
      double theirsMs = medianMs(folder, deck(network)) - idleMs;
      report.append(
          String.format(
              Locale.ROOT,
              "%d nodes%s: %.3f ms, ngspice %.1f ms net of %.1f ms start-up, ratio %.0f%n",
              network.nodes().size(),
              powers ? " with constant powers" : "",
              oursMs,
              theirsMs,
              idleMs,
              theirsMs / oursMs));
    }
    System.out.print(report);
  }

  private static double medianMs(Path folder, String deck)
      throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("deck.cir"), deck);
    double[] times = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      long start = System.nanoTime();
      int code =
          new ProcessBuilder("ngspice", "-b", file.toString())
              .redirectErrorStream(true)
              .redirectOutput(folder.resolve("out.txt").toFile())
              .start()
              .waitFor();
      times[i] = (System.nanoTime() - start) / 1e6;
      if (code != 0) {
        throw new IOException("ngspice ended with " + code + ", see " + folder.resolve("out.txt"));
      }
    }
    Arrays.sort(times);
    return times[ROUNDS / 2];
  }

  private static String deck(Network network) {
    Map<String, String> nodes = new HashMap<>();
    for (String node : network.nodes()) {
      nodes.put(node, node.equals(network.reference()) ? "0" : "n" + nodes.size());
    }
    StringBuilder text = new StringBuilder("a harness\n");
    int i = 0;
    for (Element e : network.elements()) {
      i++;
      String ends = nodes.get(e.from()) + " " + nodes.get(e.to()) + " ";
      if (e instanceof Source s) {
        text.append("V%d x%d %s %s%n".formatted(i, i, nodes.get(s.from()), s.emfV()));
        text.append("R%d x%d %s %s%n".formatted(i, i, nodes.get(s.to()), s.internalOhm()));
      } else if (e instanceof Link l) {
        text.append("R%d %s %s%n".formatted(i, ends, l.ohm()));
      } else if (e instanceof ConstantResistance r) {
        text.append("R%d %s %s%n".formatted(i, ends, r.ohm()));
      } else if (e instanceof ConstantCurrent c) {
        text.append("I%d %s %s%n".formatted(i, ends, c.currentA()));
      } else if (e instanceof ConstantPower p) {
        text.append(
            "B%d %s I=%s/max(V(%s),%s)%n.nodeset V(%s)=12%n"
                .formatted(
                    i,
                    ends,
                    p.powerW(),
                    ends.trim().replace(' ', ','),
                    p.cutOffV(),
                    nodes.get(p.from())));
      }
    }
    return text.append(".op\n.end\n").toString();
  }
}
