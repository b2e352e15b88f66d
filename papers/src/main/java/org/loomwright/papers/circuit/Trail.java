package org.loomwright.papers.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.NetworkBranch;
import org.loomwright.model.design.NetworkState;

/** Ways through a solved network along what conducts; loads and the battery end them. */
final class Trail {
  /** The battery and its posts, as networks name them. */
  static final String BATTERY = "battery";

  static final String POSITIVE = "battery positive";
  static final String NEGATIVE = "battery negative";

  private static final Set<String> ENDS =
      Set.of("load ", "factory load ", "other current ", "other components");

  private Trail() {}

  /** The node of a pin. */
  static String pin(String need) {
    return "pin " + need;
  }

  /** What a pin feeds; empty for pins without a current. */
  static Optional<NetworkBranch> load(NetworkState state, String need) {
    return state.branches().stream()
        .filter(it -> it.name().startsWith("load ") && it.name().endsWith("(" + need + ")"))
        .findFirst();
  }

  /** The battery. */
  static Optional<NetworkBranch> battery(NetworkState state) {
    return state.branches().stream().filter(it -> it.name().equals(BATTERY)).findFirst();
  }

  /**
   * Branches from one node to another, fewest first, in order; empty where there is no way, or
   * nothing between.
   */
  static List<NetworkBranch> between(NetworkState state, String from, String to) {
    Map<String, List<NetworkBranch>> next = new LinkedHashMap<>();
    for (NetworkBranch branch : state.branches()) {
      boolean conducts =
          !branch.name().equals(BATTERY) && ENDS.stream().noneMatch(branch.name()::startsWith);
      if (conducts) {
        next.computeIfAbsent(branch.from(), node -> new ArrayList<>()).add(branch);
        next.computeIfAbsent(branch.to(), node -> new ArrayList<>()).add(branch);
      }
    }
    Map<String, List<NetworkBranch>> reached = new LinkedHashMap<>(Map.of(from, List.of()));
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String node = open.removeFirst();
      List<NetworkBranch> way = reached.getOrDefault(node, List.of());
      if (node.equals(to)) {
        return way;
      }
      for (NetworkBranch branch : next.getOrDefault(node, List.of())) {
        String other = branch.from().equals(node) ? branch.to() : branch.from();
        // Current reaches a pin or leaves by a post; it does not run through another's post.
        boolean through = !other.equals(NEGATIVE) && !other.equals(POSITIVE) || other.equals(to);
        if (through && !reached.containsKey(other)) {
          List<NetworkBranch> longer = new ArrayList<>(way);
          longer.add(branch);
          reached.put(other, longer);
          open.add(other);
        }
      }
    }
    return List.of();
  }
}
