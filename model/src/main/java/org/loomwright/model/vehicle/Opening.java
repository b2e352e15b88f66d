package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.TimeSpan;

/**
 * A panel, cover or block that has to be opened to reach something.
 *
 * @param id name used in references
 * @param name name for people, with article, e.g. "the left B-pillar trim"
 * @param place where it is
 * @param open time to open
 * @param close time to close
 * @param behind openings that must be open before this one can be
 * @param tools tools needed
 * @param caution what to take care of, shown before opening
 * @param restraint whether airbag or pretensioner parts are within reach once open
 */
public record Opening(
    String id,
    String name,
    String place,
    TimeSpan open,
    TimeSpan close,
    List<String> behind,
    List<String> tools,
    Optional<String> caution,
    boolean restraint) {
  public Opening {
    behind = List.copyOf(behind);
    tools = List.copyOf(tools);
  }
}
