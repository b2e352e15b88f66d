package org.loomwright.physics.network;

import org.loomwright.physics.Require;

/**
 * A battery or an alternator: an electromotive force behind an internal resistance.
 *
 * @param name unique name
 * @param negative node of the negative terminal; the element's {@code from}
 * @param positive node of the positive terminal; the element's {@code to}
 * @param emfV electromotive force, V, not below zero; 0 stands for a dead source
 * @param internalOhm internal resistance, ohm, above zero (1e-6 to 1e9)
 */
public record Source(String name, String negative, String positive, double emfV, double internalOhm)
    implements Element {
  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the source and the bad value
   */
  public Source {
    Elements.ends("source", name, negative, positive);
    Require.notNegative("electromotive force of \"" + name + "\"", emfV, "V");
    Elements.resistance("source", name, internalOhm);
  }

  @Override
  public String from() {
    return negative;
  }

  @Override
  public String to() {
    return positive;
  }

  /** The same source with another electromotive force. */
  public Source withEmf(double otherEmfV) {
    return new Source(name, negative, positive, otherEmfV, internalOhm);
  }
}
