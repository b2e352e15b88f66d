package org.loomwright.planner.fit;

import java.util.List;
import org.loomwright.planner.builds.Diagram;

/**
 * Which part number a build gets.
 *
 * @param ids part numbers
 * @param whole outcome: place in {@code ids}, or one more than the last where the build gets none
 */
public record Numbers(List<String> ids, Diagram<Left> whole) {
  public Numbers {
    ids = List.copyOf(ids);
  }
}
