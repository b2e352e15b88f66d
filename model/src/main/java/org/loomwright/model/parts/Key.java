package org.loomwright.model.parts;

import org.loomwright.model.quantity.Length;

/**
 * A shape that keeps a housing from being mated the wrong way, as a rectangle on or at the edge of
 * its face. Places are as on file: wire side, latch up.
 *
 * @param form whether it stands out or is let in
 * @param x centre, to the right
 * @param y centre, downwards
 * @param width width
 * @param height height
 */
public record Key(KeyForm form, Length x, Length y, Length width, Length height) {}
