package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.physics.SumException;
import org.loomwright.physics.wire.Conductor;

/** Networks with closed forms, as every textbook of circuit theory works them. */
final class TextbookNetworksTest {
  private static Joint r(String name, String from, String to, double ohm) {
    return new Joint(name, from, to, Joint.Kind.RESISTOR, ohm, "made up");
  }

  /** The R-2R ladder: every node has half the voltage of the one before. */
  @Test
  void ladderHalvesAtEveryNode() {
    List<Element> all = new ArrayList<>();
    all.add(new Source("E", "0", "n1", 16, 1));
    for (int k = 1; k <= 8; k++) {
      all.add(r("shunt" + k, "n" + k, "0", 2));
      if (k < 8) {
        all.add(r("series" + k, "n" + k, "n" + (k + 1), 1));
      }
    }
    all.add(r("end", "n8", "0", 2));
    Solved solved = NetworkAssert.solved(new Network("0", all));
    for (int k = 1; k <= 8; k++) {
      NetworkAssert.voltage(solved, "n" + k, 16 / Math.pow(2, k));
    }
    NetworkAssert.current(solved, "E", 8);
  }

  /**
   * Wheatstone's bridge out of balance, by Thevenin's theorem: Ig = E (R2 R3 - R1 R4) / (R1 R2 (R3
   * + R4) + R3 R4 (R1 + R2) + Rg (R1 + R2)(R3 + R4)).
   */
  @ParameterizedTest
  @CsvSource({"100,100,100,100,50", "100,120,100,100,50", "10,47,33,22,5", "1000,10,20,3000,0.1"})
  void bridge(double r1, double r2, double r3, double r4, double rg) {
    Network bridge =
        new Network(
            "0",
            List.of(
                new Source("E", "0", "top", 12, 1e-6),
                r("R1", "top", "a", r1),
                r("R2", "a", "0", r2),
                r("R3", "top", "b", r3),
                r("R4", "b", "0", r4),
                r("Rg", "a", "b", rg)));
    double below = r1 * r2 * (r3 + r4) + r3 * r4 * (r1 + r2) + rg * (r1 + r2) * (r3 + r4);
    double expected = 12 * (r2 * r3 - r1 * r4) / below;
    NetworkAssert.current(NetworkAssert.solved(bridge), "Rg", expected);
  }

  /** The cube of twelve equal resistors: 5/6 R across the body, 3/4 R a face, 7/12 R an edge. */
  @ParameterizedTest
  @CsvSource({"7,5,6", "3,3,4", "1,7,12"})
  void cube(int corner, double over, double under) {
    List<Element> all = new ArrayList<>();
    for (int a = 0; a < 8; a++) {
      for (int bit = 1; bit < 8; bit *= 2) {
        if ((a & bit) == 0) {
          all.add(r("edge" + a + "-" + bit, "c" + a, "c" + (a | bit), 6));
        }
      }
    }
    all.add(new Source("E", "c0", "plus", 10, 1));
    all.add(r("lead", "plus", "c" + corner, 1));
    Solved solved = NetworkAssert.solved(new Network("c0", all));
    NetworkAssert.current(solved, "E", 10 / (2 + 6 * over / under));
  }

  /** A constant power behind a resistance: V = (E + sqrt(E² - 4 P R)) / 2, up to P = E² / (4 R). */
  @ParameterizedTest
  @CsvSource({"1", "100", "300", "359", "359.99"})
  void constantPower(double watt) {
    Solved solved = NetworkAssert.solved(power(watt, 0));
    double expected = (12 + Math.sqrt(144 - 4 * watt * 0.1)) / 2;
    // Close to the nose the voltage is a steep function of the power.
    assertThat(solved.voltageV("load")).isCloseTo(expected, within(1e-6));
    assertThat(solved.flow("device").powerW()).isCloseTo(watt, within(1e-6));
  }

  @Test
  void morePowerThanTheLineBringsCollapses() {
    NetworkOutcome outcome = NetworkAssert.outcome(power(450, 0));
    assertThat(outcome)
        .isInstanceOfSatisfying(
            NoOperatingPoint.class,
            n -> {
              assertThat(n.reason()).isEqualTo(NoOperatingPoint.Reason.VOLTAGE_COLLAPSE);
              assertThat(n.deliverableShare()).isCloseTo(360.0 / 450, within(1e-4));
              assertThat(n.shortfalls().get(0).voltageV()).isCloseTo(6, within(0.1));
            });
    assertThat(outcome.message()).contains("collapses", "80.0 %", "device");
  }

  @Test
  void aVoltageBelowTheCutOffIsNoOperatingPoint() {
    assertThat(NetworkAssert.outcome(power(300, 9))).isInstanceOf(NoOperatingPoint.class);
    assertThat(NetworkAssert.outcome(power(300, 8))).isInstanceOf(Solved.class);
    NetworkOutcome deep = NetworkAssert.outcome(currents(200));
    assertThat(deep.message()).contains("load device", "-8.00 V", "cut-off of 0.00 V");
  }

  private static Network power(double watt, double cutOffV) {
    return new Network(
        "0",
        List.of(
            new Source("E", "0", "post", 12, 0.04),
            r("line", "post", "load", 0.06),
            new ConstantPower("device", "load", "0", watt, cutOffV)));
  }

  private static Network currents(double amps) {
    return new Network(
        "0",
        List.of(
            new Source("E", "0", "post", 12, 0.04),
            r("line", "post", "load", 0.06),
            new ConstantCurrent("device", "load", "0", amps)));
  }

  @Test
  void feedAndGroundDropApart() {
    Conductor c = Conductor.metric(2.5);
    double perM = c.resistanceOhmPerM(60);
    Network n =
        new Network(
            "body",
            List.of(
                new Source("battery", "minus", "plus", 12.6, 0.01),
                r("strap", "minus", "body", 0.001),
                Joint.fuse("F1", "plus", "F1-out", 0.005, "made up"),
                new Wire("feed", "F1-out", "pin1", c, 3, 60),
                new ConstantCurrent("lamp", "pin1", "pin2", 10),
                new Wire("return", "pin2", "body", c, 1, 60)));
    Solved solved = NetworkAssert.solved(n);
    LoadDrop drop = LoadDrop.of(solved, "lamp", "battery");
    assertThat(drop.terminalV()).isCloseTo(12.5, within(NetworkAssert.EXACT_V));
    assertThat(drop.feedDropV()).isCloseTo(10 * (0.005 + 3 * perM), within(NetworkAssert.EXACT_V));
    assertThat(drop.groundDropV()).isCloseTo(10 * (0.001 + perM), within(NetworkAssert.EXACT_V));
    assertThat(drop.loadV() + drop.feedDropV() + drop.groundDropV())
        .isCloseTo(drop.terminalV(), within(NetworkAssert.EXACT_V));
    assertThat(drop.trace().lines()).hasSize(7);
    assertThat(solved.trace().lines())
        .anySatisfy(l -> assertThat(l.what()).isEqualTo("voltage of node pin1"));
    assertThat(solved.lossW()).isCloseTo(100 * (0.01 + 0.001 + 0.005 + 4 * perM), within(1e-6));
  }

  @Test
  void floatingPartsAreNamed() {
    Network n =
        new Network(
            "0",
            List.of(
                new Source("E", "0", "post", 12, 0.04),
                r("line", "post", "in", 0.06),
                new ConstantCurrent("device", "in", "out", 1),
                r("return", "out", "stud", 0.01)));
    assertThat(NetworkAssert.outcome(n))
        .isEqualTo(
            new NotConnected(
                List.of(
                    new NotConnected.Part(List.of("out", "stud"), List.of("device", "return")))));
    assertThat(NetworkAssert.outcome(n).message()).contains("node out, stud (with device, return)");
  }

  @Test
  void idealBranchesAndWrongNamesAreRefused() {
    assertThatThrownBy(() -> r("weld", "a", "b", 0))
        .isInstanceOf(SumException.class)
        .hasMessageContaining("resistor \"weld\" must have a resistance from 0.000001 to")
        .hasMessageContaining("make its two nodes one");
    assertThatThrownBy(() -> r("weld", "a", "b", Double.NaN)).hasMessageContaining("not a number");
    assertThatThrownBy(() -> new Source("E", "0", "p", 12, 0)).hasMessageContaining("source \"E\"");
    assertThatThrownBy(() -> new Wire("w", "a", "b", Conductor.metric(1), 0, 20))
        .hasMessageContaining("length of wire \"w\" must be above zero");
    assertThatThrownBy(() -> r("loop", "a", "a", 1)).hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Network("0", List.of(r("x", "a", "0", 1), r("x", "b", "0", 1))))
        .hasMessageContaining("two elements of the network are named \"x\"");
    assertThatThrownBy(() -> new Network("0", List.of(r("x", "a", "b", 1))))
        .hasMessageContaining("reference node \"0\"");
    assertThatThrownBy(() -> new ConstantPower("p", "a", "b", Double.NaN, 0))
        .isInstanceOf(SumException.class);
  }

  /** One ohm apart and a million apart in one network: still exact to the tolerances. */
  @Test
  void resistancesFarApart() {
    Network n =
        new Network(
            "0",
            List.of(
                new Source("E", "0", "p", 12, 1e-6),
                r("strap", "p", "q", 1e-6),
                r("meter", "q", "s", 1e9),
                r("heater", "s", "0", 1),
                new ConstantCurrent("lamp", "q", "0", 100)));
    Solved solved = NetworkAssert.solved(n);
    NetworkAssert.current(solved, "strap", 100);
    assertThat(solved.flow("meter").currentA()).isCloseTo(12e-9, within(1e-12));
    assertThat(solved.network().with(Map.of()).nodes()).containsExactly("0", "p", "q", "s");
  }
}
