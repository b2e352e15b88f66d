package org.loomwright.physics.heat;

import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.wire.Conductor;

/**
 * One wire of a bundle with its own current.
 *
 * @param name which wire, for the reader
 * @param conductor the wire
 * @param currentA its steady (or root-mean-square) current, A, 0 to 100 000
 */
public record LoadedWire(String name, Conductor conductor, double currentA) {
  /** Checks the range. */
  public LoadedWire {
    Require.within("current in " + name, currentA, 0, 100_000, "A");
  }

  /** The same wire with another current. */
  public LoadedWire withCurrentA(double otherA) {
    return new LoadedWire(name, conductor, otherA);
  }

  /**
   * Joule heat per area of the whole wire with a temperature in the middle of the bundle, W/(m·mm²)
   * but for a constant; infinite where the conductor would melt.
   */
  double heatDensity(double middleC) {
    double d = conductor.overallDiameterMm();
    OptionalDouble t = BundleState.conductorC(this, middleC);
    return t.isEmpty()
        ? Double.POSITIVE_INFINITY
        : currentA * currentA * conductor.resistanceOhmPerM(t.getAsDouble()) / (d * d);
  }
}
