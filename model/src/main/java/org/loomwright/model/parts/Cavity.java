package org.loomwright.model.parts;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Length;

/**
 * One cavity of a housing.
 *
 * @param number number as moulded
 * @param x centre, to the right, seen on the wire side with the latch up
 * @param y centre, downwards, seen on the wire side with the latch up
 * @param width width of the drawn cavity
 * @param height height of the drawn cavity
 * @param terminals terminals that fit it
 * @param plug cavity plug that seals it when empty; required in a sealed housing
 */
public record Cavity(
    String number,
    Length x,
    Length y,
    Length width,
    Length height,
    List<String> terminals,
    Optional<String> plug) {
  public Cavity {
    terminals = List.copyOf(terminals);
  }
}
