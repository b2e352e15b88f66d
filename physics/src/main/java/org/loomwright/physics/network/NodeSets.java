package org.loomwright.physics.network;

import java.util.HashMap;
import java.util.Map;

/** Sets of joined nodes (union and find). */
final class NodeSets {
  private final Map<String, String> parents = new HashMap<>();

  NodeSets(Iterable<String> nodes) {
    for (String node : nodes) {
      parents.put(node, node);
    }
  }

  /** The node that stands for the set of a node. */
  String leader(String node) {
    String at = node;
    while (true) {
      String up = parents.getOrDefault(at, at);
      if (up.equals(at)) {
        return at;
      }
      String further = parents.getOrDefault(up, up);
      parents.put(at, further);
      at = further;
    }
  }

  void join(String a, String b) {
    parents.put(leader(a), leader(b));
  }
}
