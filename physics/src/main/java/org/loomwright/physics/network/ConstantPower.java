package org.loomwright.physics.network;

import org.loomwright.physics.Require;

/**
 * A load with a converter of its own, that takes more current the lower the voltage: I = P / V.
 *
 * <p>Of the two voltages at which such a load could balance against a line, the higher one is
 * meant: the lower one is not stable. Where the line cannot bring the power at any voltage, or only
 * below the cut-off, there is no operating point: a real load would switch off, recover, and switch
 * on again.
 *
 * @param name unique name
 * @param from supply node
 * @param to ground node
 * @param powerW power, W, not below zero
 * @param cutOffV lowest voltage at which it runs, V, not below zero; 0: it has none
 */
public record ConstantPower(String name, String from, String to, double powerW, double cutOffV)
    implements Load {
  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the load and the bad value
   */
  public ConstantPower {
    Elements.ends("load", name, from, to);
    Require.notNegative("power of load \"" + name + "\"", powerW, "W");
    Require.notNegative("cut-off voltage of load \"" + name + "\"", cutOffV, "V");
  }

  @Override
  public double currentA(double voltageV) {
    return powerW == 0 ? 0 : powerW / voltageV;
  }
}
