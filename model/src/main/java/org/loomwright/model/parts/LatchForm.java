package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;

/**
 * Where on the top edge the latch is, when not in the middle or not of common width.
 *
 * @param x its middle, to the right, seen on the wire side
 * @param width its width
 */
public record LatchForm(Length x, Length width) {}
