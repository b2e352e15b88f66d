package org.loomwright.drawing.map;

import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.ink.Spot;

/**
 * A place on the map.
 *
 * @param number number shown in it; places in use come first
 * @param id the place
 * @param name its name
 * @param used whether a lead passes it or ends there
 * @param at its position in the plan view in the vehicle's own mm; empty where it is not marked
 * @param ends what ends there
 */
record Stop(
    int number, String id, String name, boolean used, Optional<Spot> at, List<EndRow> ends) {
  Stop {
    ends = List.copyOf(ends);
  }

  /** The stop as if nothing ended there. */
  Stop withoutEnds() {
    return new Stop(number, id, name, used, at, List.of());
  }
}
