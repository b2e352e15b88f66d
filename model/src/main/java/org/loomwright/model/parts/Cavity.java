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
 * @param closed whether it is moulded closed: nothing can ever go in, yet it is seen as a position
 *     and counted as one
 * @param round whether it is round also in a face that is not
 */
public record Cavity(
    String number,
    Length x,
    Length y,
    Length width,
    Length height,
    List<String> terminals,
    Optional<String> plug,
    boolean closed,
    boolean round) {
  public Cavity {
    terminals = List.copyOf(terminals);
  }

  /** An open cavity, square in a square face. */
  public Cavity(
      String number,
      Length x,
      Length y,
      Length width,
      Length height,
      List<String> terminals,
      Optional<String> plug) {
    this(number, x, y, width, height, terminals, plug, false, false);
  }
}
