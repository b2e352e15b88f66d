package org.loomwright.model.design;

/**
 * What flows through one element of a network.
 *
 * @param name element
 * @param from its first node; of a source, the negative post
 * @param to its second node
 * @param currentA current from {@code from} to {@code to}, A
 * @param voltageV voltage of {@code from} against {@code to}, V
 * @param lossW heat made in it, W; 0 for loads
 */
public record NetworkBranch(
    String name, String from, String to, double currentA, double voltageV, double lossW) {}
