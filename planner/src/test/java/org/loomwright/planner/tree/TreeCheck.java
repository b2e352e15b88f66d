package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks at found trees and forests with nothing but the links: faults in words. */
final class TreeCheck {
  private TreeCheck() {}

  /** Faults of a tree that shall join some nodes. */
  static List<String> faults(List<Link> links, Set<String> nodes, FoundTree tree) {
    List<String> faults = new ArrayList<>();
    Map<String, Link> known = new HashMap<>();
    links.forEach(link -> known.put(link.id(), link));
    tree.links().stream()
        .filter(id -> !known.containsKey(id))
        .forEach(id -> faults.add("unknown link " + id));
    List<Link> used = links.stream().filter(link -> tree.links().contains(link.id())).toList();
    if (!used.stream().map(Link::id).toList().equals(List.copyOf(tree.links()))) {
      faults.add("links out of order");
    }
    faults.addAll(cycles(used));
    Map<String, String> colour = coloured(used);
    if (nodes.size() > 1
        && nodes.stream().map(node -> colour.getOrDefault(node, node)).distinct().count() > 1) {
      faults.add("not all joined");
    }
    Set<String> pieces =
        used.stream().map(link -> colour.get(link.from())).collect(Collectors.toSet());
    if (pieces.size() > 1) {
      faults.add("in pieces");
    }
    faults.addAll(needless(used, nodes));
    faults.addAll(sums(used, tree.cost(), tree.leastCost(), tree.exact()));
    return faults;
  }

  /** Faults of a forest that shall join some pairs. */
  static List<String> faults(List<Link> links, List<Ends> pairs, Forest forest) {
    List<String> faults = new ArrayList<>();
    if (!links.stream().filter(forest.links()::contains).toList().equals(forest.links())) {
      faults.add("links out of order or unknown");
    }
    faults.addAll(cycles(forest.links()));
    Set<Link> walked = new HashSet<>();
    for (Ends ends : pairs) {
      List<Link> path = forest.path(ends.from(), ends.to());
      String at = ends.from();
      for (Link link : path) {
        at = link.other(at);
      }
      if (!at.equals(ends.to())) {
        faults.add("path from " + ends.from() + " ends at " + at);
      }
      if (!forest.links().containsAll(path) || new HashSet<>(path).size() != path.size()) {
        faults.add("path leaves the forest or repeats itself");
      }
      walked.addAll(path);
    }
    if (walked.size() < forest.links().size()) {
      faults.add("a link that no pair uses");
    }
    faults.addAll(sums(forest.links(), forest.cost(), forest.leastCost(), forest.exact()));
    return faults;
  }

  private static List<String> sums(List<Link> used, double cost, double least, boolean exact) {
    List<String> faults = new ArrayList<>();
    double sum = used.stream().mapToDouble(Link::cost).sum();
    if (!(Math.abs(sum - cost) <= 1e-9 * Math.max(1, sum))) {
      faults.add("costs " + sum + ", not " + cost);
    }
    if (!(least <= cost) || exact != (least == cost)) {
      faults.add("bound " + least + " does not go with cost " + cost);
    }
    return faults;
  }

  private static List<String> cycles(List<Link> used) {
    Map<String, String> colour = new HashMap<>();
    List<String> faults = new ArrayList<>();
    for (Link link : used) {
      String from = colour.getOrDefault(link.from(), link.from());
      String to = colour.getOrDefault(link.to(), link.to());
      if (from.equals(to)) {
        faults.add("cycle closed by " + link.id());
      }
      colour.putIfAbsent(link.from(), from);
      colour.putIfAbsent(link.to(), to);
      colour.replaceAll((node, old) -> old.equals(from) ? to : old);
    }
    return faults;
  }

  /** A colour for each piece, by repainting. */
  private static Map<String, String> coloured(List<Link> used) {
    Map<String, String> colour = new HashMap<>();
    for (Link link : used) {
      String from = colour.getOrDefault(link.from(), link.from());
      String to = colour.getOrDefault(link.to(), link.to());
      colour.put(link.from(), from);
      colour.put(link.to(), to);
      colour.replaceAll((node, old) -> old.equals(from) ? to : old);
    }
    return colour;
  }

  private static List<String> needless(List<Link> used, Set<String> nodes) {
    Map<String, Integer> count = new HashMap<>();
    for (Link link : used) {
      count.merge(link.from(), 1, Integer::sum);
      count.merge(link.to(), 1, Integer::sum);
    }
    return count.entrySet().stream()
        .filter(entry -> entry.getValue() == 1 && !nodes.contains(entry.getKey()))
        .map(entry -> "needless branch to " + entry.getKey())
        .toList();
  }
}
