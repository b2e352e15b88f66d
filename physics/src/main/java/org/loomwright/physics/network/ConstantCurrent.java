package org.loomwright.physics.network;

import org.loomwright.physics.Require;

/**
 * A load that takes the same current at any voltage from its cut-off upwards.
 *
 * @param name unique name
 * @param from supply node
 * @param to ground node
 * @param currentA current, A, not below zero
 * @param cutOffV lowest voltage at which it still takes the current, V, not below zero
 */
public record ConstantCurrent(String name, String from, String to, double currentA, double cutOffV)
    implements Load {
  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the load and the bad value
   */
  public ConstantCurrent {
    Elements.ends("load", name, from, to);
    Require.notNegative("current of load \"" + name + "\"", currentA, "A");
    Require.notNegative("cut-off voltage of load \"" + name + "\"", cutOffV, "V");
  }

  /** A load without a cut-off: any voltage from 0 V will do. */
  public ConstantCurrent(String name, String from, String to, double currentA) {
    this(name, from, to, currentA, 0);
  }

  @Override
  public double currentA(double voltageV) {
    return currentA;
  }
}
