package org.loomwright.drawing.ink;

/**
 * A point of a picture.
 *
 * @param x mm to the right
 * @param y mm downwards
 */
public record Spot(double x, double y) {}
