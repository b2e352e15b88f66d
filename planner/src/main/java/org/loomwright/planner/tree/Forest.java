package org.loomwright.planner.tree;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Trees that together join every pair asked for, no two of which touch.
 *
 * @param links its links in the order of the input
 * @param cost sum of their costs
 * @param leastCost what any forest that joins the pairs costs at least, however long its paths;
 *     equals {@code cost} when exact
 * @param exact whether no forest that joins the pairs can cost less
 * @param notes what a reader should know: how far it may be from the least cost, what short paths
 *     cost, paths that stay over-long
 */
public record Forest(
    List<Link> links, double cost, double leastCost, boolean exact, List<String> notes) {
  public Forest {
    links = List.copyOf(links);
    notes = List.copyOf(notes);
  }

  /**
   * The only path between two nodes, in order as walked; no link when both are the same.
   *
   * @throws IllegalArgumentException when the forest does not join them
   */
  public List<Link> path(String from, String to) {
    Map<String, List<Link>> at = new HashMap<>();
    for (Link link : links) {
      at.computeIfAbsent(link.from(), node -> new ArrayList<>()).add(link);
      at.computeIfAbsent(link.to(), node -> new ArrayList<>()).add(link);
    }
    Map<String, Link> came = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String node = open.removeLast();
      for (Link link : at.getOrDefault(node, List.of())) {
        String next = link.other(node);
        if (!next.equals(from) && came.putIfAbsent(next, link) == null) {
          open.addLast(next);
        }
      }
    }
    List<Link> path = new ArrayList<>();
    String node = to;
    while (!node.equals(from)) {
      Link link = came.get(node);
      if (link == null) {
        throw new IllegalArgumentException("the forest does not join " + from + " and " + to);
      }
      path.add(link);
      node = link.other(node);
    }
    Collections.reverse(path);
    return List.copyOf(path);
  }
}
