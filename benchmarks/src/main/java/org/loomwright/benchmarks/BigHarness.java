package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Element;
import org.loomwright.physics.network.Joint;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.Source;

/** A made-up harness of any size: a bus, fused lines with taps, shared grounds, some ring lines. */
final class BigHarness {
  private static final int TAPS_OF_A_LINE = 12;

  private BigHarness() {}

  /**
   * @param nodes about how many nodes
   * @param powers whether every third load takes a constant power
   */
  static Network of(int nodes, boolean powers) {
    Random random = new Random(nodes);
    List<Element> all = new ArrayList<>();
    all.add(new Source("battery", "body", "bus", 12.6, 0.002));
    int made = 2;
    for (int line = 0; made < nodes; line++) {
      String at = "line" + line;
      all.add(Joint.fuse("fuse" + line, "bus", at, 0.003, "made up"));
      String ground = "ground" + line;
      all.add(joint(all.size(), ground, "body", 0.001));
      made += 2;
      for (int tap = 0; tap < TAPS_OF_A_LINE && made < nodes; tap++) {
        String next = at + "-" + tap;
        String pin = next + "-pin";
        all.add(joint(all.size(), tap == 0 ? at : at + "-" + (tap - 1), next, ohm(random)));
        all.add(joint(all.size(), next, pin, ohm(random)));
        all.add(load(all.size(), pin, ground, powers ? tap % 3 : tap % 2));
        made += 2;
      }
      if (line % 5 == 4) {
        all.add(joint(all.size(), at, "line" + (line - 1), ohm(random)));
      }
    }
    return new Network("body", all);
  }

  private static double ohm(Random random) {
    return 0.002 + 0.02 * random.nextDouble();
  }

  private static Joint joint(int number, String from, String to, double ohm) {
    return new Joint("r" + number, from, to, Joint.Kind.RESISTOR, ohm, "made up");
  }

  private static Element load(int number, String from, String to, int kind) {
    String name = "load" + number;
    return switch (kind) {
      case 0 -> new ConstantCurrent(name, from, to, 0.4);
      case 1 -> new ConstantResistance(name, from, to, 40);
      default -> new ConstantPower(name, from, to, 4, 6);
    };
  }
}
