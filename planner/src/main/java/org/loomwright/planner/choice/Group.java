package org.loomwright.planner.choice;

import java.util.List;
import java.util.Map;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/**
 * Builds that no condition in play of one component tells apart.
 *
 * @param region builds
 * @param ways ways each need has on them
 */
public record Group(Region region, Map<NeedAt, List<Way>> ways) {
  public Group {
    ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
  }
}
