package org.loomwright.planner.kit;

import java.util.OptionalDouble;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Drop;

/** Voltage a factory circuit loses before a splice. */
final class HostDrop {
  /** Temperature a loaded factory wire is taken to have, °C (common practice). */
  static final double CONDUCTOR_C = 70;

  private HostDrop() {}

  /**
   * Drop over the whole length of the circuit at its own and the added current; 0 when its length
   * is not on file.
   */
  static double volts(Circuit circuit, double addedA) {
    if (circuit.length().isEmpty()) {
      return 0;
    }
    Conductor conductor =
        circuit.wire().awg().isPresent()
            ? Conductor.awg(circuit.wire().awg().getAsInt())
            : Conductor.metric(circuit.wire().areaMm2());
    double currentA = circuit.load().map(load -> load.amperes()).orElse(0.0) + addedA;
    return Drop.of(
            new Drop.Input(
                conductor,
                circuit.length().get().mm() / 1000,
                OptionalDouble.empty(),
                currentA,
                12,
                CONDUCTOR_C))
        .dropV();
  }
}
