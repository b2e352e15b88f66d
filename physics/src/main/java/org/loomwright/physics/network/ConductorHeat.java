package org.loomwright.physics.network;

import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.heat.WireHeat;

/** Gives the steady temperature a wire's conductor reaches at a current. */
@FunctionalInterface
public interface ConductorHeat {
  /**
   * @param wire the wire; its own temperature is only the last guess
   * @param currentA magnitude of the current, A
   * @return conductor temperature, °C; empty if the conductor would melt
   */
  OptionalDouble temperatureC(Wire wire, double currentA);

  /**
   * Every wire alone in still air; see {@link WireHeat}.
   *
   * @param ambientC temperature of the air, -60 to 250 °C
   * @throws SumException outside that range
   */
  static ConductorHeat inStillAir(double ambientC) {
    Require.within("ambient temperature", ambientC, -60, 250, "°C");
    return (wire, currentA) -> {
      WireHeat.Lying lying = WireHeat.Lying.single(wire.conductor(), ambientC);
      try {
        return OptionalDouble.of(WireHeat.temperature(lying, currentA).conductorC());
      } catch (SumException melts) {
        // The place and the current are in range, so this is the one other reason.
        return OptionalDouble.empty();
      }
    };
  }
}
