package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws that hold for every network. */
final class NetworkPropertiesTest {
  private static Network linear(long seed) {
    return RandomNetworks.solvable(seed, RandomNetworks.Loads.LINEAR);
  }

  /** Scales sources and currents; zero leaves the resistances alone. */
  private static Network scaled(Network n, double sources, double currents) {
    Map<String, Element> changed = new LinkedHashMap<>();
    for (Source s : n.all(Source.class)) {
      changed.put(s.name(), s.withEmf(sources * s.emfV()));
    }
    for (ConstantCurrent c : n.all(ConstantCurrent.class)) {
      changed.put(
          c.name(), new ConstantCurrent(c.name(), c.from(), c.to(), currents * c.currentA()));
    }
    return n.with(changed);
  }

  /** Sum of the states with the load currents once and with twice the sources more. */
  @Property(tries = 200)
  void superposition(@ForAll long seed) {
    Network n = linear(seed);
    Solved a = NetworkAssert.solved(scaled(n, 1, 1));
    Solved b = NetworkAssert.solved(scaled(n, 0.5, 0));
    Solved both = NetworkAssert.solved(scaled(n, 1.5, 1));
    for (String node : n.nodes()) {
      NetworkAssert.voltage(both, node, a.voltageV(node) + b.voltageV(node));
    }
    for (Element e : n.elements()) {
      NetworkAssert.current(
          both, e.name(), a.flow(e.name()).currentA() + b.flow(e.name()).currentA());
    }
  }

  @Property(tries = 200)
  void scaling(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 50) double by) {
    Network n = linear(seed);
    Solved one = NetworkAssert.solved(n);
    Solved many = NetworkAssert.solved(scaled(n, by, by));
    for (String node : n.nodes()) {
      assertThat(many.voltageV(node)).isCloseTo(by * one.voltageV(node), within(1e-6));
    }
  }

  /** Passive parts only take power; no node lies outside the range the sources span. */
  @Property(tries = 200)
  void passivity(@ForAll long seed) {
    Network n = linear(seed);
    Solved s = NetworkAssert.solved(n);
    double highest = n.all(Source.class).stream().mapToDouble(Source::emfV).max().orElse(0);
    for (Link link : n.all(Link.class)) {
      assertThat(s.flow(link.name()).powerW()).isNotNegative();
      assertThat(s.flow(link.name()).lossW()).isNotNegative();
    }
    for (String node : n.nodes()) {
      assertThat(s.voltageV(node)).isBetween(-1e-9, highest + 1e-9);
    }
  }

  /** Rayleigh's law: between two nodes nothing gets easier when any resistance grows. */
  @Property(tries = 200)
  void moreResistanceNeverLessDrop(
      @ForAll long seed, @ForAll @DoubleRange(min = 1, max = 10) double by) {
    Network n = linear(seed);
    List<Load> loads = n.all(Load.class);
    Load kept = loads.get(new Random(seed).nextInt(loads.size()));
    Network single =
        n.without(loads.stream().map(Load::name).filter(l -> !l.equals(kept.name())).toList())
            .with(Map.of(kept.name(), new ConstantCurrent(kept.name(), kept.from(), kept.to(), 1)));
    Network sameEmf = single.without(List.of("alternator"));
    List<Wire> wires = sameEmf.all(Wire.class);
    Wire longer = wires.get(new Random(~seed).nextInt(wires.size()));
    Network more =
        sameEmf.with(
            Map.of(
                longer.name(),
                new Wire(
                    longer.name(),
                    longer.from(),
                    longer.to(),
                    longer.conductor(),
                    by * longer.lengthM(),
                    longer.temperatureC())));
    assertThat(-NetworkAssert.solved(more).flow(kept.name()).voltageV())
        .isGreaterThanOrEqualTo(-NetworkAssert.solved(sameEmf).flow(kept.name()).voltageV() - 1e-9);
  }

  @Property(tries = 100)
  void theOrderOfElementsDoesNotMatter(@ForAll long seed) {
    Network n = RandomNetworks.of(seed, RandomNetworks.Loads.MIXED);
    List<Element> shuffled = new ArrayList<>(n.elements());
    Collections.shuffle(shuffled, new Random(seed));
    NetworkOutcome one = NetworkSolver.solve(n);
    NetworkOutcome two = NetworkSolver.solve(new Network(n.reference(), shuffled));
    assertThat(two).hasSameClassAs(one);
    if (one instanceof Solved a && two instanceof Solved b) {
      NetworkAssert.checked(a);
      NetworkAssert.checked(b);
      for (String node : n.nodes()) {
        NetworkAssert.voltage(b, node, a.voltageV(node));
      }
    }
  }

  /** With a longer wire in the line the constant powers draw no less and get no more voltage. */
  @Property(tries = 100)
  void constantPowerDrawsMoreOverALongerLine(
      @ForAll @DoubleRange(min = 1, max = 400) double watt,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double ohm) {
    NetworkOutcome near = NetworkSolver.solve(line(watt, ohm));
    NetworkOutcome far = NetworkSolver.solve(line(watt, 1.1 * ohm));
    if (far instanceof Solved f) {
      assertThat(near).isInstanceOf(Solved.class);
      Solved n = NetworkAssert.checked((Solved) near);
      assertThat(NetworkAssert.checked(f).voltageV("pin")).isLessThan(n.voltageV("pin"));
      assertThat(f.flow("device").currentA()).isGreaterThan(n.flow("device").currentA());
    }
    double most = 144 / (4 * (ohm + 0.01));
    // Within a millionth of the most power either answer is right.
    if (Math.abs(watt - most) > 1e-6 * most) {
      assertThat(near instanceof Solved).isEqualTo(watt < most);
    }
  }

  private static Network line(double watt, double ohm) {
    return new Network(
        "0",
        List.of(
            new Source("E", "0", "post", 12, 0.01),
            new Joint("line", "post", "pin", Joint.Kind.RESISTOR, ohm, "made up"),
            new ConstantPower("device", "pin", "0", watt, 0)));
  }
}
