package org.loomwright.planner.electrics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.loomwright.physics.network.Link;
import org.loomwright.physics.network.Network;

/** Ways along links of a network. */
final class Paths {
  private Paths() {}

  private record Step(String node, Link by) {}

  /**
   * Links from a node to the nearest wanted one, fewest links first; empty where none can be
   * reached.
   */
  static List<Link> toNearest(Network network, String from, Predicate<String> wanted) {
    Map<String, List<Step>> next = new LinkedHashMap<>();
    for (Link link : network.all(Link.class)) {
      next.computeIfAbsent(link.from(), n -> new ArrayList<>()).add(new Step(link.to(), link));
      next.computeIfAbsent(link.to(), n -> new ArrayList<>()).add(new Step(link.from(), link));
    }
    Map<String, List<Link>> reached = new LinkedHashMap<>(Map.of(from, List.of()));
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String node = open.removeFirst();
      List<Link> path = reached.getOrDefault(node, List.of());
      if (wanted.test(node)) {
        return path;
      }
      for (Step step : next.getOrDefault(node, List.of())) {
        if (!reached.containsKey(step.node())) {
          List<Link> longer = new ArrayList<>(path);
          longer.add(step.by());
          reached.put(step.node(), longer);
          open.add(step.node());
        }
      }
    }
    return List.of();
  }

  /** The same links in the opposite order. */
  static List<Link> reversed(List<Link> path) {
    List<Link> turned = new ArrayList<>(path);
    Collections.reverse(turned);
    return turned;
  }
}
