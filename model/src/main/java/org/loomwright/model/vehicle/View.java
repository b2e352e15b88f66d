package org.loomwright.model.vehicle;

/**
 * How the fitter sees a connector or block once it is reached.
 *
 * @param side face looked at
 * @param latch where its latch points
 */
public record View(Side side, LatchDirection latch) {}
