package org.loomwright.physics.network;

/**
 * What flows through one element.
 *
 * @param name the element's name
 * @param from its first node; of a source, the negative terminal
 * @param to its second node; of a source, the positive terminal
 * @param currentA current through the element from {@code from} to {@code to}, A; of a source,
 *     positive when it delivers
 * @param voltageV voltage of {@code from} against {@code to}, V; of a source, minus its terminal
 *     voltage
 * @param lossW heat made in the element, W: I²R of links and of a source's internal resistance; 0
 *     for loads, whose power is {@link #powerW}
 */
public record BranchFlow(
    String name, String from, String to, double currentA, double voltageV, double lossW) {
  /** Power the element takes from the network, W; negative when it delivers. */
  public double powerW() {
    return voltageV * currentA;
  }
}
