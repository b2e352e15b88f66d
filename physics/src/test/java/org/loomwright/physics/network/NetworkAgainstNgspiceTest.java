package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Our states of random vehicle networks against those of a circuit simulator. */
final class NetworkAgainstNgspiceTest {
  private static final long FIRST_SEED = 20_260_101;
  private static final int NETWORKS = 200;

  /** Agreement asked for: 1 mV or 0.01 %, whichever is more. */
  private static final double VOLTAGE_V = 1e-3;

  private static final double VOLTAGE_SHARE = 1e-4;

  /** Agreement asked for: 0.1 %, and a millionth of an ampere where no current flows. */
  private static final double CURRENT_SHARE = 1e-3;

  private static final double CURRENT_A = 1e-6;

  @TempDir private Path folder = Path.of("");

  @Test
  void agrees() throws Exception {
    List<Long> seeds = new ArrayList<>();
    List<Solved> ours = new ArrayList<>();
    int without = 0;
    for (long seed = FIRST_SEED; ours.size() < NETWORKS; seed++) {
      Network network = RandomNetworks.of(seed, RandomNetworks.Loads.MIXED);
      if (NetworkAssert.outcome(network) instanceof Solved s) {
        seeds.add(seed);
        ours.add(NetworkAssert.checked(s));
      } else {
        without++;
      }
    }
    System.out.println("network seeds " + FIRST_SEED + " to " + seeds.get(NETWORKS - 1));
    assertThat(without).as("networks without a state").isLessThan(NETWORKS / 10);
    List<Ngspice.Answer> answers =
        Ngspice.solve(ours.stream().map(Solved::network).toList(), folder);
    double worstV = 0;
    double worstShare = 0;
    int powers = 0;
    for (int i = 0; i < NETWORKS; i++) {
      Solved s = ours.get(i);
      powers += s.network().all(ConstantPower.class).size();
      for (Map.Entry<String, Double> theirs : answers.get(i).voltagesV().entrySet()) {
        double apart = Math.abs(s.voltageV(theirs.getKey()) - theirs.getValue());
        worstV = Math.max(worstV, apart);
        assertThat(apart)
            .as("seed " + seeds.get(i) + ", node " + theirs.getKey())
            .isLessThanOrEqualTo(Math.max(VOLTAGE_V, VOLTAGE_SHARE * Math.abs(theirs.getValue())));
      }
      for (Map.Entry<String, Double> theirs : answers.get(i).currentsA().entrySet()) {
        double apart = Math.abs(s.flow(theirs.getKey()).currentA() - theirs.getValue());
        double size = Math.abs(theirs.getValue());
        worstShare =
            Math.max(worstShare, Math.max(0, apart - CURRENT_A) / Math.max(size, CURRENT_A));
        assertThat(apart)
            .as("seed " + seeds.get(i) + ", element " + theirs.getKey())
            .isLessThanOrEqualTo(Math.max(CURRENT_A, CURRENT_SHARE * size));
      }
    }
    System.out.printf(
        "%d networks, %d constant powers: voltages within %.2g V, currents within %.2g %%%n",
        NETWORKS, powers, worstV, 100 * worstShare);
    assertThat(powers).as("constant powers compared").isGreaterThan(NETWORKS);
  }
}
