package org.loomwright.physics.network;

/**
 * Something that takes power: from its supply node ({@code from}) to its ground node ({@code to}).
 */
public sealed interface Load extends Element
    permits ConstantCurrent, ConstantResistance, ConstantPower {
  /**
   * Lowest voltage across the load at which it runs, V; zero if it has none. A state of the network
   * that leaves it less is no operating point.
   */
  double cutOffV();

  /**
   * The current the load takes at a voltage.
   *
   * @param voltageV voltage across it, V; above zero for a load of constant power
   */
  double currentA(double voltageV);
}
