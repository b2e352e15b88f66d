package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the parts of a network that nothing conducting joins to the reference node. */
final class FloatingParts {
  private FloatingParts() {}

  static List<NotConnected.Part> of(Network network) {
    NodeSets sets = new NodeSets(network.nodes());
    for (Element e : network.elements()) {
      if (!(e instanceof ConstantCurrent) && !(e instanceof ConstantPower)) {
        sets.join(e.from(), e.to());
      }
    }
    String grounded = sets.leader(network.reference());
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (String node : network.nodes()) {
      String leader = sets.leader(node);
      if (!leader.equals(grounded)) {
        parts.computeIfAbsent(leader, k -> new ArrayList<>()).add(node);
      }
    }
    List<NotConnected.Part> found = new ArrayList<>();
    for (List<String> nodes : parts.values()) {
      List<String> touching =
          network.elements().stream()
              .filter(e -> nodes.contains(e.from()) || nodes.contains(e.to()))
              .map(Element::name)
              .toList();
      found.add(new NotConnected.Part(nodes, touching));
    }
    return found;
  }
}
