package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.physics.heat.BundleHeat;
import org.loomwright.physics.heat.LoadedWire;
import org.loomwright.physics.wire.Conductor;

/**
 * A made-up bundle as vehicles have them: few thick wires, many thin ones, a third of them idle.
 */
final class MixedBundle {
  private static final double[] AREAS_MM2 = {0.5, 0.75, 1, 0.5, 1.5, 0.75, 2.5, 0.5, 4, 6};

  private MixedBundle() {}

  /**
   * @param wires how many
   * @param perMm2 current of a loaded wire, A/mm²
   */
  static BundleHeat.Bundle of(int wires, double perMm2) {
    List<LoadedWire> all = new ArrayList<>();
    for (int i = 0; i < wires; i++) {
      Conductor c = Conductor.metric(AREAS_MM2[i % AREAS_MM2.length]);
      double share = i % 3 == 2 ? 0 : 0.7 + 0.3 * (i % 5) / 4;
      all.add(new LoadedWire("w" + i, c, share * perMm2 * c.areaMm2()));
    }
    return BundleHeat.Bundle.bare(all, 40);
  }
}
