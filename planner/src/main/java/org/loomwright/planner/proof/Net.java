package org.loomwright.planner.proof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Lead;

/**
 * Points that are connected to each other on some builds, grounds at its rim.
 *
 * @param nodes nodes
 * @param links connections between them
 */
record Net(Set<String> nodes, List<Link> links) {

  /** The nets that links form; nets that touch only at a ground stay apart. */
  static List<Net> of(List<Link> links) {
    Map<String, List<Link>> at = new LinkedHashMap<>();
    for (Link link : links) {
      at.computeIfAbsent(link.from(), node -> new ArrayList<>()).add(link);
      at.computeIfAbsent(link.to(), node -> new ArrayList<>()).add(link);
    }
    List<Net> nets = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (String start : at.keySet()) {
      if (Nodes.endsNet(start) || !seen.add(start)) {
        continue;
      }
      Set<String> nodes = new LinkedHashSet<>();
      Set<Link> within = new LinkedHashSet<>();
      Deque<String> next = new ArrayDeque<>(List.of(start));
      nodes.add(start);
      while (!next.isEmpty()) {
        String node = next.remove();
        for (Link link : at.getOrDefault(node, List.of())) {
          within.add(link);
          String other = link.other(node);
          if (nodes.add(other) && !Nodes.endsNet(other)) {
            next.add(other);
          }
        }
      }
      seen.addAll(nodes);
      nets.add(new Net(nodes, List.copyOf(within)));
    }
    return nets;
  }

  boolean hasLeads() {
    return links.stream().anyMatch(link -> link.lead().isPresent());
  }

  /** Leads of the net, each once. */
  List<Lead> leads() {
    return links.stream().flatMap(link -> link.lead().stream()).distinct().toList();
  }

  /** The connections from one node to another; empty when there is no way. */
  Optional<List<Link>> path(String from, String to) {
    Map<String, Link> came = new HashMap<>();
    Deque<String> next = new ArrayDeque<>(List.of(from));
    Set<String> seen = new LinkedHashSet<>(List.of(from));
    while (!next.isEmpty()) {
      String node = next.remove();
      if (node.equals(to)) {
        List<Link> path = new ArrayList<>();
        for (String at = to; !at.equals(from); ) {
          Link link = came.get(at);
          if (link == null) {
            throw new IllegalStateException("a path without a beginning at " + at);
          }
          path.add(0, link);
          at = link.other(at);
        }
        return Optional.of(path);
      }
      if (Nodes.endsNet(node)) {
        continue;
      }
      for (Link link : links) {
        if (link.from().equals(node) || link.to().equals(node)) {
          String other = link.other(node);
          if (seen.add(other)) {
            came.put(other, link);
            next.add(other);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Whether some connection closes a ring, grounds counted as apart for each connection. */
  boolean hasRing() {
    long inner = nodes.stream().filter(node -> !Nodes.endsNet(node)).count();
    long between =
        links.stream()
            .filter(link -> !Nodes.endsNet(link.from()) && !Nodes.endsNet(link.to()))
            .count();
    return between > inner - 1;
  }
}
