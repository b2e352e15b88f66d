package org.loomwright.physics.network;

/**
 * A load that behaves as a resistor: a heater, a lamp at its working point.
 *
 * @param name unique name
 * @param from supply node
 * @param to ground node
 * @param ohm resistance, 1e-6 to 1e9 ohm
 */
public record ConstantResistance(String name, String from, String to, double ohm) implements Load {
  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the load and the bad value
   */
  public ConstantResistance {
    Elements.ends("load", name, from, to);
    Elements.resistance("load", name, ohm);
  }

  /** None: a resistor takes any voltage. */
  @Override
  public double cutOffV() {
    return 0;
  }

  @Override
  public double currentA(double voltageV) {
    return voltageV / ohm;
  }
}
