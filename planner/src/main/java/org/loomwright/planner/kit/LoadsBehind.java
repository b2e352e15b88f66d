package org.loomwright.planner.kit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.physics.network.Element;
import org.loomwright.physics.network.Link;
import org.loomwright.physics.network.Load;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;

/**
 * Which loads' currents flow through a link: those on the side of it that is cut off from every
 * source when the link is taken away. Where both sides keep a source no such sum exists.
 */
final class LoadsBehind {
  private LoadsBehind() {}

  /**
   * Currents of the loads behind a link, by name and in the order of the network, A; none where
   * they don't add up to its current.
   */
  static Map<String, Double> of(Solved state, String link) {
    Network network = state.network();
    Link cut =
        network.all(Link.class).stream()
            .filter(it -> it.name().equals(link))
            .findFirst()
            .orElse(null);
    if (cut == null) {
      return Map.of();
    }
    for (String end : List.of(cut.from(), cut.to())) {
      Set<String> side = side(network, end, link);
      boolean fed =
          network.all(Source.class).stream()
              .anyMatch(it -> side.contains(it.positive()) || side.contains(it.negative()));
      if (!fed) {
        return sum(state, side, Math.abs(state.flow(link).currentA()));
      }
    }
    return Map.of();
  }

  private static Map<String, Double> sum(Solved state, Set<String> side, double currentA) {
    Map<String, Double> behind = new LinkedHashMap<>();
    for (Load load : state.network().all(Load.class)) {
      if (side.contains(load.from()) != side.contains(load.to())) {
        behind.put(load.name(), state.flow(load.name()).currentA());
      }
    }
    double sum = behind.values().stream().mapToDouble(it -> it).sum();
    return same(sum, currentA) ? behind : Map.of();
  }

  /** Equal but for what the solving of a network leaves over. */
  static boolean same(double one, double other) {
    return Math.abs(one - other) <= 1e-6 * Math.max(Math.abs(one), Math.abs(other));
  }

  private static Set<String> side(Network network, String start, String without) {
    Set<String> reached = new LinkedHashSet<>(Set.of(start));
    Deque<String> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      String node = open.pop();
      for (Element it : network.all(Link.class)) {
        if (!it.name().equals(without) && (it.from().equals(node) || it.to().equals(node))) {
          String next = it.from().equals(node) ? it.to() : it.from();
          if (reached.add(next)) {
            open.push(next);
          }
        }
      }
    }
    return reached;
  }
}
