package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Planted faults: the checker must find each. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class NetworkCheckTest {
  private final Solved good =
      NetworkAssert.solved(RandomNetworks.of(4711, RandomNetworks.Loads.MIXED));

  private static List<String> faults(Solved s) {
    return NetworkCheck.check(s).faults();
  }

  private Solved with(String element, double factor, double lossFactor) {
    BranchFlow f = good.flow(element);
    Map<String, BranchFlow> flows = new LinkedHashMap<>(good.flows());
    flows.put(
        element,
        new BranchFlow(
            f.name(),
            f.from(),
            f.to(),
            f.currentA() * factor,
            f.voltageV(),
            f.lossW() * lossFactor));
    return new Solved(good.network(), good.voltagesV(), flows, 1, 0);
  }

  private Solved withVoltage(String node, double v) {
    Map<String, Double> voltages = new LinkedHashMap<>(good.voltagesV());
    voltages.put(node, v);
    return new Solved(good.network(), voltages, good.flows(), 1, 0);
  }

  @Test
  void everyBranchCountsAndEveryNode() {
    for (String element : good.flows().keySet()) {
      assertThat(faults(with(element, -1, 1))).as("sign of " + element).isNotEmpty();
      assertThat(faults(with(element, 1.0001, 1))).as("size of " + element).isNotEmpty();
      assertThat(faults(with(element, Double.NaN, 1))).as("NaN in " + element).isNotEmpty();
    }
    for (String node : good.voltagesV().keySet()) {
      assertThat(faults(withVoltage(node, good.voltageV(node) + 1e-4))).as(node).isNotEmpty();
      assertThat(faults(withVoltage(node, Double.NaN))).as("NaN at " + node).isNotEmpty();
    }
  }

  @Test
  void lossesCount() {
    assertThat(faults(with("fuse0", 1, 2)))
        .anySatisfy(f -> assertThat(f).contains("loss of fuse0"));
    assertThat(faults(with("fuse0", 1, Double.NaN))).isNotEmpty();
  }

  @Test
  void aMissingFigureIsAFault() {
    Map<String, BranchFlow> flows = new LinkedHashMap<>(good.flows());
    flows.remove("fuse0");
    assertThat(faults(new Solved(good.network(), good.voltagesV(), flows, 1, 0)))
        .containsExactly("no current for element fuse0");
    Map<String, Double> voltages = new LinkedHashMap<>(good.voltagesV());
    voltages.remove("bus");
    assertThat(faults(new Solved(good.network(), voltages, good.flows(), 1, 0)))
        .contains("no voltage for node bus");
  }

  @Test
  void anotherNetworkWithTheSameNamesIsAFault() {
    Joint fuse = good.network().find(Joint.class, "fuse0");
    Joint half = Joint.fuse(fuse.name(), fuse.from(), fuse.to(), fuse.ohm() / 2, fuse.source());
    Network other = good.network().with(Map.of("fuse0", half));
    assertThat(faults(new Solved(other, good.voltagesV(), good.flows(), 1, 0)))
        .anySatisfy(f -> assertThat(f).contains("fuse0 misses its law"));
  }
}
