package org.loomwright.physics.protection;

/**
 * A point of the protection chart.
 *
 * @param currentA current, A, above zero
 * @param timeS time, s, above zero
 */
public record ChartPoint(double currentA, double timeS) {}
