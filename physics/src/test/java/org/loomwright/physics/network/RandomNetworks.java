package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.loomwright.physics.wire.Conductor;

/**
 * Networks as vehicles have them, made up from a seed: one or two sources, a bus, several fuses,
 * tapped lines, shared grounds, mixed loads, at times a wire that joins two lines.
 */
final class RandomNetworks {
  private static final List<Conductor> SIZES =
      Conductor.metricCatalogue().stream()
          .filter(c -> c.areaMm2() >= 0.5 && c.areaMm2() <= 6)
          .toList();

  private final Random random;
  private final List<Element> elements = new ArrayList<>();
  private final List<String> taps = new ArrayList<>();
  private final List<String> grounds = new ArrayList<>();

  private RandomNetworks(long seed) {
    this.random = new Random(seed);
  }

  /** Which loads may occur. */
  enum Loads {
    CURRENTS,
    LINEAR,
    MIXED
  }

  static Network of(long seed, Loads kinds) {
    return new RandomNetworks(seed).make(kinds);
  }

  /**
   * The first network with a state from a seed on: now and then the loads of a seed take more than
   * its wires bring.
   */
  static Network solvable(long seed, Loads kinds) {
    long at = seed;
    while (!(NetworkSolver.solve(of(at, kinds)) instanceof Solved)) {
      at++;
    }
    return of(at, kinds);
  }

  /** A network of one source and single lines without meshes. */
  static Network tree(long seed, Loads kinds) {
    RandomNetworks made = new RandomNetworks(seed);
    made.supply(false);
    made.lines();
    made.loads(kinds);
    return new Network("gnd", made.elements);
  }

  private Network make(Loads kinds) {
    supply(random.nextInt(3) == 0);
    lines();
    if (random.nextInt(3) == 0) {
      String a = pick(taps);
      String b = pick(taps);
      if (!a.equals(b)) {
        wire(a, b);
      }
    }
    loads(kinds);
    return new Network("gnd", elements);
  }

  private void supply(boolean alternator) {
    elements.add(new Source("battery", "gnd", "post", between(11.5, 13), between(0.005, 0.03)));
    wire("post", "bus");
    if (alternator) {
      elements.add(new Source("alternator", "gnd", "gen", between(13.5, 14.8), between(0.01, 0.1)));
      wire("gen", "bus");
    }
    joint(Joint.Kind.GROUND_POINT, "gnd", "chassis", between(0.0001, 0.002));
  }

  private void lines() {
    int groundCount = 1 + random.nextInt(3);
    for (int g = 0; g < groundCount; g++) {
      String point = "point" + g;
      joint(Joint.Kind.GROUND_POINT, point, "chassis", between(0.0005, 0.005));
      wire("return" + g, point);
      grounds.add("return" + g);
    }
    int fuses = 2 + random.nextInt(5);
    for (int f = 0; f < fuses; f++) {
      String at = "line" + f;
      elements.add(Joint.fuse("fuse" + f, "bus", at, between(0.001, 0.02), "made up"));
      int tapCount = 1 + random.nextInt(4);
      for (int t = 0; t < tapCount; t++) {
        String next = "tap" + f + "-" + t;
        wire(at, next);
        String plug = "plug" + f + "-" + t;
        joint(Joint.Kind.CONTACT, next, plug, between(0.002, 0.01));
        taps.add(plug);
        at = next;
      }
    }
  }

  private void loads(Loads kinds) {
    for (String tap : taps) {
      String name = "load-" + tap;
      String ground = pick(grounds);
      int kind =
          switch (kinds) {
            case CURRENTS -> 0;
            case LINEAR -> random.nextInt(2);
            case MIXED -> random.nextInt(3);
          };
      elements.add(
          switch (kind) {
            case 0 -> new ConstantCurrent(name, tap, ground, between(0.05, 4));
            case 1 -> new ConstantResistance(name, tap, ground, between(2, 100));
            default -> new ConstantPower(name, tap, ground, between(1, 40), 6);
          });
    }
  }

  private void wire(String from, String to) {
    elements.add(
        new Wire(
            "wire" + elements.size(),
            from,
            to,
            SIZES.get(random.nextInt(SIZES.size())),
            between(0.1, 4),
            between(-20, 90)));
  }

  private void joint(Joint.Kind kind, String from, String to, double ohm) {
    elements.add(new Joint("joint" + elements.size(), from, to, kind, ohm, "made up"));
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private String pick(List<String> from) {
    return from.get(random.nextInt(from.size()));
  }
}
