package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Least costs by trying everything. */
final class BruteForce {
  private BruteForce() {}

  /** Least cost of a tree: for every set of further nodes the least tree over just those. */
  static OptionalDouble tree(List<Link> links, Set<String> nodes) {
    List<String> further =
        links.stream()
            .flatMap(link -> Stream.of(link.from(), link.to()))
            .distinct()
            .filter(node -> !nodes.contains(node))
            .toList();
    OptionalDouble least = OptionalDouble.empty();
    for (int set = 0; set < 1 << further.size(); set++) {
      List<String> taken = new ArrayList<>(nodes);
      for (int i = 0; i < further.size(); i++) {
        if ((set >> i & 1) != 0) {
          taken.add(further.get(i));
        }
      }
      OptionalDouble cost = spanning(links, taken);
      if (cost.isPresent() && (least.isEmpty() || cost.getAsDouble() < least.getAsDouble())) {
        least = cost;
      }
    }
    return least;
  }

  private static OptionalDouble spanning(List<Link> links, List<String> nodes) {
    Map<String, String> colour = new HashMap<>();
    nodes.forEach(node -> colour.put(node, node));
    double cost = 0;
    for (Link link : links.stream().sorted(Comparator.comparingDouble(Link::cost)).toList()) {
      String from = colour.get(link.from());
      String to = colour.get(link.to());
      if (from != null && to != null && !from.equals(to)) {
        cost += link.cost();
        colour.replaceAll((node, old) -> old.equals(from) ? to : old);
      }
    }
    return colour.values().stream().distinct().count() <= 1
        ? OptionalDouble.of(cost)
        : OptionalDouble.empty();
  }

  /** Least cost of links that join all pairs: every set of links is tried. */
  static OptionalDouble forest(List<Link> links, List<Ends> pairs) {
    OptionalDouble least = OptionalDouble.empty();
    for (int set = 0; set < 1 << links.size(); set++) {
      Map<String, String> colour = new HashMap<>();
      pairs.forEach(pair -> colour.put(pair.from(), pair.from()));
      pairs.forEach(pair -> colour.put(pair.to(), pair.to()));
      double cost = 0;
      for (int i = 0; i < links.size(); i++) {
        if ((set >> i & 1) != 0) {
          Link link = links.get(i);
          cost += link.cost();
          String from = colour.getOrDefault(link.from(), link.from());
          String to = colour.getOrDefault(link.to(), link.to());
          colour.put(link.from(), from);
          colour.put(link.to(), to);
          colour.replaceAll((node, old) -> old.equals(from) ? to : old);
        }
      }
      if ((least.isEmpty() || cost < least.getAsDouble())
          && pairs.stream()
              .allMatch(
                  pair -> colour.getOrDefault(pair.from(), "").equals(colour.get(pair.to())))) {
        least = OptionalDouble.of(cost);
      }
    }
    return least;
  }
}
