package org.loomwright.model.design;

/**
 * One line of the way to a figure.
 *
 * @param what quantity
 * @param formula formula or "given"
 * @param value value
 * @param unit unit, empty for a pure number
 * @param source publication or document the formula or value comes from
 */
public record TraceLine(String what, String formula, double value, String unit, String source) {}
