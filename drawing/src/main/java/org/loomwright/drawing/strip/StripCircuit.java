package org.loomwright.drawing.strip;

import java.util.List;

/**
 * One circuit as a strip shows it.
 *
 * @param name what the circuit is, for the picture's title
 * @param out parts from the source to the load, both included, as the current meets them
 * @param back parts from the load back to the source
 */
public record StripCircuit(String name, List<StripPart> out, List<StripPart> back) {
  /** Copies the lists. */
  public StripCircuit {
    out = List.copyOf(out);
    back = List.copyOf(back);
  }
}
