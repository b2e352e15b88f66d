package org.loomwright.physics.network;

import org.loomwright.physics.Require;
import org.loomwright.physics.wire.Conductor;

/**
 * A length of one conductor at one temperature.
 *
 * @param name unique name
 * @param from first node
 * @param to second node
 * @param conductor the conductor
 * @param lengthM length, m, above zero
 * @param temperatureC conductor temperature, -100 to 1083 °C
 */
public record Wire(
    String name, String from, String to, Conductor conductor, double lengthM, double temperatureC)
    implements Link {
  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the wire and the bad value
   */
  public Wire {
    Elements.ends("wire", name, from, to);
    Require.positive("length of wire \"" + name + "\"", lengthM, "m");
    Elements.resistance("wire", name, conductor.resistanceOhmPerM(temperatureC) * lengthM);
  }

  /** R = r20 · L · (234.5 + T) / 254.5; see {@link org.loomwright.physics.wire.Copper}. */
  @Override
  public double ohm() {
    return conductor.resistanceOhmPerM(temperatureC) * lengthM;
  }

  /** The same wire at another conductor temperature. */
  public Wire at(double otherTemperatureC) {
    return new Wire(name, from, to, conductor, lengthM, otherTemperatureC);
  }
}
