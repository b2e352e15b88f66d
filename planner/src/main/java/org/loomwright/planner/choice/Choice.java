package org.loomwright.planner.choice;

import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Unserved;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/**
 * What was chosen.
 *
 * @param components components, in the order of their first need
 * @param unserved builds for which nothing can be chosen
 */
public record Choice(List<Component> components, List<Unserved> unserved) {
  public Choice {
    components = List.copyOf(components);
    unserved = List.copyOf(unserved);
  }

  /**
   * Needs that were planned together.
   *
   * @param needs needs
   * @param groups number of groups told apart
   * @param picks disjoint regions with the ways chosen for them
   */
  public record Component(List<NeedAt> needs, int groups, List<Pick> picks) {
    public Component {
      needs = List.copyOf(needs);
      picks = List.copyOf(picks);
    }
  }

  /**
   * Builds that get the same ways.
   *
   * @param region builds
   * @param ways way per need
   */
  public record Pick(Region region, Map<NeedAt, Way> ways) {
    public Pick {
      ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
    }
  }

  /** Number of groups over all components. */
  public int groups() {
    return components.stream().mapToInt(Component::groups).sum();
  }
}
