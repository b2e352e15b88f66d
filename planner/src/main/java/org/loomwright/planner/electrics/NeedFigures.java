package org.loomwright.planner.electrics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a need gets in a joint case.
 *
 * @param path links from the bus bar to the pin, or for a ground from the pin to the battery's
 *     negative post
 * @param supply links from the battery's positive post to the bus bar; empty for a ground
 * @param lowestV lowest voltage across its load while it is on, V; empty for a ground or a pin
 *     without current
 * @param lowestState the state that gives it, in words; empty where there is none
 */
public record NeedFigures(
    List<PathPart> path, List<PathPart> supply, OptionalDouble lowestV, String lowestState) {
  /** Copies the path. */
  public NeedFigures {
    path = List.copyOf(path);
    supply = List.copyOf(supply);
  }

  /**
   * Most voltage lost on the path, V: each link at its own highest current. No state loses more; a
   * state in which all links carry their most at once loses just that.
   */
  public double dropV() {
    return path.stream().mapToDouble(PathPart::dropV).sum();
  }
}
