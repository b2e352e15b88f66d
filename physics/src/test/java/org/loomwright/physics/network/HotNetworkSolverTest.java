package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.wire.Conductor;

final class HotNetworkSolverTest {
  private static final ConductorHeat AIR = ConductorHeat.inStillAir(40);

  private static Network line(Load load, double lengthM) {
    return new Network(
        "0",
        List.of(
            new Source("battery", "0", "post", 12.6, 0.01),
            new Wire("feed", "post", "pin", Conductor.metric(1), lengthM, 20),
            load));
  }

  /** A constant current heats the wire whatever its resistance: one sum gives the answer. */
  @Test
  void constantCurrent() {
    HotOutcome.Settled hot = settled(line(new ConstantCurrent("lamp", "pin", "0", 15), 2));
    double expected =
        WireHeat.temperature(WireHeat.Lying.single(Conductor.metric(1), 40), 15).conductorC();
    assertThat(hot.temperatureC("feed")).isCloseTo(expected, within(0.01));
    assertThat(hot.solved().flow("feed").voltageV())
        .isCloseTo(15 * 2 * Conductor.metric(1).resistanceOhmPerM(expected), within(1e-4));
    assertThat(hot.rounds()).isLessThan(5);
  }

  /** A resistive load: halving the range of temperatures until both sides agree. */
  @Test
  void resistor() {
    HotOutcome.Settled hot = settled(line(new ConstantResistance("heater", "pin", "0", 0.6), 2));
    double low = 40;
    double high = 1000;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      double ohm = 0.61 + 2 * Conductor.metric(1).resistanceOhmPerM(middle);
      double reached =
          WireHeat.temperature(WireHeat.Lying.single(Conductor.metric(1), 40), 12.6 / ohm)
              .conductorC();
      if (reached > middle) {
        low = middle;
      } else {
        high = middle;
      }
    }
    assertThat(hot.temperatureC("feed")).isCloseTo(low, within(0.01));
  }

  @Property(tries = 40)
  void temperaturesFitTheCurrents(@ForAll long seed) {
    Network n = RandomNetworks.of(seed, RandomNetworks.Loads.MIXED);
    if (NetworkAssert.hot(n, AIR) instanceof HotOutcome.Settled hot) {
      NetworkAssert.checked(hot.solved());
      for (Wire w : hot.solved().network().all(Wire.class)) {
        double current = Math.abs(hot.solved().flow(w.name()).currentA());
        assertThat(AIR.temperatureC(w, current).orElseThrow())
            .isCloseTo(w.temperatureC(), within(HotNetworkSolver.SETTLED_K));
      }
    }
  }

  @Test
  void aShortCircuitMeltsTheWire() {
    HotOutcome outcome =
        NetworkAssert.hot(line(new ConstantResistance("short", "pin", "0", 0.001), 1), AIR);
    assertThat(outcome).isInstanceOf(HotOutcome.TooHot.class);
    assertThat(outcome.message()).contains("wire feed", "would melt");
  }

  /** Cold the current would melt it, but hot the wire's own resistance holds the current down. */
  @Test
  void aWireThatOnlyWouldMeltColdSettles() {
    Network n = line(new ConstantResistance("short", "pin", "0", 0.001), 6);
    HotOutcome outcome = NetworkAssert.hot(n, AIR);
    assertThat(outcome).isInstanceOf(HotOutcome.Settled.class);
    double cold = NetworkAssert.solved(n).flow("feed").currentA();
    assertThat(cold)
        .isGreaterThan(1.5 * ((HotOutcome.Settled) outcome).solved().flow("feed").currentA());
  }

  /** Cold the line brings the power, hot it does not. */
  @Test
  void aStateThatIsLostWithHeat() {
    Network n = line(new ConstantPower("device", "pin", "0", 190, 0), 10);
    assertThat(NetworkAssert.outcome(n)).isInstanceOf(Solved.class);
    HotOutcome outcome = NetworkAssert.hot(n, AIR);
    assertThat(outcome).isInstanceOf(HotOutcome.Unsolved.class);
    assertThat(outcome.message()).contains("collapses");
  }

  @Test
  void whatNeverSettlesIsSaid() {
    ConductorHeat jumpy = (w, amps) -> OptionalDouble.of(w.temperatureC() > 50 ? 0 : 100);
    HotOutcome outcome =
        NetworkAssert.hot(line(new ConstantCurrent("lamp", "pin", "0", 1), 1), jumpy);
    assertThat(outcome)
        .isInstanceOfSatisfying(
            HotOutcome.NotSettled.class,
            o -> assertThat(o.rounds()).isEqualTo(HotNetworkSolver.MOST_ROUNDS));
    assertThat(outcome.message()).contains("wire feed still moves");
    assertThatThrownBy(() -> ConductorHeat.inStillAir(300)).hasMessageContaining("ambient");
  }

  private static HotOutcome.Settled settled(Network n) {
    HotOutcome outcome = NetworkAssert.hot(n, AIR);
    assertThat(outcome).as(outcome.message()).isInstanceOf(HotOutcome.Settled.class);
    HotOutcome.Settled settled = (HotOutcome.Settled) outcome;
    NetworkAssert.checked(settled.solved());
    return settled;
  }
}
