package org.loomwright.physics.network;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Solves networks with a circuit simulator that shares nothing with our code. */
final class Ngspice {
  private static final String MARK = "circuit-number";
  private static final int MOST_SECONDS = 120;

  private Ngspice() {}

  /** Node voltages and element currents as the simulator prints them, in our names. */
  record Answer(Map<String, Double> voltagesV, Map<String, Double> currentsA) {}

  /** Solves all networks in one run of the simulator, working in an empty folder. */
  static List<Answer> solve(List<Network> networks, Path folder)
      throws IOException, InterruptedException {
    StringBuilder driver = new StringBuilder("many networks\nR0 a 0 1\n.control\nset numdgt=15\n");
    List<Deck> decks = new ArrayList<>();
    for (int i = 0; i < networks.size(); i++) {
      Deck deck = new Deck(networks.get(i));
      decks.add(deck);
      Files.writeString(folder.resolve("n" + i + ".cir"), deck.text());
      driver.append("source n").append(i).append(".cir\nop\necho ").append(MARK).append(' ');
      driver.append(i).append("\nprint all\n");
      deck.resistors.values().forEach(r -> driver.append("print @").append(r).append("[i]\n"));
      driver.append("destroy all\nremcirc\n");
    }
    driver.append("quit\n.endc\n.end\n");
    Files.writeString(folder.resolve("all.cir"), driver);
    List<Map<String, Double>> printed = run(folder, networks.size());
    List<Answer> answers = new ArrayList<>();
    for (int i = 0; i < networks.size(); i++) {
      answers.add(decks.get(i).answer(printed.get(i)));
    }
    return answers;
  }

  private static List<Map<String, Double>> run(Path folder, int count)
      throws IOException, InterruptedException {
    Path out = folder.resolve("out.txt");
    Process process;
    try {
      process =
          new ProcessBuilder("ngspice", "-b", "all.cir")
              .directory(folder.toFile())
              .redirectError(folder.resolve("err.txt").toFile())
              .redirectOutput(out.toFile())
              .start();
    } catch (IOException e) {
      throw new AssertionError(
          "the test needs the program ngspice (package ngspice, apt-get install ngspice)", e);
    }
    if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("ngspice took more than " + MOST_SECONDS + " s");
    }
    List<Map<String, Double>> printed = new ArrayList<>();
    for (String line : Files.readAllLines(out, StandardCharsets.ISO_8859_1)) {
      String[] parts = line.trim().split("\\s+");
      if (parts[0].equals(MARK)) {
        printed.add(new HashMap<>());
      } else if (parts.length == 3 && parts[1].equals("=") && !printed.isEmpty()) {
        printed.get(printed.size() - 1).put(parts[0], Double.parseDouble(parts[2]));
      }
    }
    if (printed.size() != count) {
      throw new AssertionError(
          "ngspice answered "
              + printed.size()
              + " of "
              + count
              + " networks:\n"
              + Files.readString(out, StandardCharsets.ISO_8859_1));
    }
    return printed;
  }

  /** One network in the simulator's language, with its short names. */
  private static final class Deck {
    private final Network network;
    private final Map<String, String> nodes = new LinkedHashMap<>();
    private final Map<String, String> resistors = new LinkedHashMap<>();
    private final Map<String, String> meters = new LinkedHashMap<>();

    Deck(Network network) {
      this.network = network;
      for (String node : network.nodes()) {
        nodes.put(node, node.equals(network.reference()) ? "0" : "n" + nodes.size());
      }
    }

    String text() {
      StringBuilder text = new StringBuilder("one network\n");
      List<Element> all = network.elements();
      for (int i = 0; i < all.size(); i++) {
        Element e = all.get(i);
        String from = node(e.from());
        String to = node(e.to());
        if (e instanceof Source s) {
          // Counted from the negative terminal: the meter sees what the source delivers.
          meters.put(e.name(), "vm" + i);
          text.append(
              "vm%d %s x%d 0\nvs%d y%d x%d %s\nrs%d y%d %s %s\n"
                  .formatted(i, from, i, i, i, i, s.emfV(), i, i, to, s.internalOhm()));
        } else if (e instanceof ConstantCurrent c) {
          meters.put(e.name(), "vm" + i);
          text.append(
              "vm%d %s x%d 0\ni%d x%d %s %s\n".formatted(i, from, i, i, i, to, c.currentA()));
        } else if (e instanceof ConstantPower p) {
          meters.put(e.name(), "vm" + i);
          // Below the cut-off held at the current there, so that its search can start anywhere.
          text.append(
              "vm%d %s x%d 0\nb%d x%d %s i=%s/max(v(x%d,%s),%s)\n.nodeset v(%s)=12 v(x%d)=12\n"
                  .formatted(i, from, i, i, i, to, p.powerW(), i, to, p.cutOffV(), from, i));
        } else {
          double ohm = e instanceof Link l ? l.ohm() : ((ConstantResistance) e).ohm();
          resistors.put(e.name(), "r" + i);
          text.append("r%d %s %s %s\n".formatted(i, from, to, ohm));
        }
      }
      return text.append(
              ".options reltol=1e-9 abstol=1e-12 vntol=1e-10 gmin=1e-15 itl1=500\n.end\n")
          .toString();
    }

    Answer answer(Map<String, Double> printed) {
      Map<String, Double> voltages = new LinkedHashMap<>();
      nodes.forEach((name, n) -> voltages.put(name, n.equals("0") ? 0.0 : value(printed, n)));
      Map<String, Double> currents = new LinkedHashMap<>();
      resistors.forEach((name, r) -> currents.put(name, value(printed, "@" + r + "[i]")));
      meters.forEach((name, m) -> currents.put(name, value(printed, m + "#branch")));
      return new Answer(voltages, currents);
    }

    private String node(String name) {
      String n = nodes.get(name);
      if (n == null) {
        throw new AssertionError("no node " + name);
      }
      return n;
    }

    private static double value(Map<String, Double> printed, String key) {
      Double v = printed.get(key);
      if (v == null) {
        throw new AssertionError("ngspice printed no " + key + ", only " + printed.keySet());
      }
      return v;
    }
  }
}
