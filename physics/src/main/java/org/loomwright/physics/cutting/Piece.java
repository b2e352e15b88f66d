package org.loomwright.physics.cutting;

/**
 * Pieces of one length.
 *
 * @param lengthMm length of each, mm, above zero
 * @param count how many, at least one
 */
public record Piece(double lengthMm, int count) {}
