package org.loomwright.physics.heat;

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

  /** Joule heat at 20 °C per area of the whole wire, W/(m·mm²) but for a constant. */
  double heatDensity() {
    double d = conductor.overallDiameterMm();
    return currentA * currentA * conductor.ohmPerM20C() / (d * d);
  }
}
