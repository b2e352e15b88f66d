package org.loomwright.planner.choice;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** Finds components that were planned apart but can't be. */
final class Clashes {
  private Clashes() {}

  /** Positions of components to join, empty when all fit together. */
  static Optional<Set<Integer>> find(List<Choice.Component> components) {
    return sameSpot(components).or(() -> overCapacity(components));
  }

  private static Optional<Set<Integer>> sameSpot(List<Choice.Component> components) {
    // Spot to component to the builds on which that component takes it.
    Map<String, Map<Integer, Region>> taken = new TreeMap<>();
    for (int i = 0; i < components.size(); i++) {
      for (Choice.Pick pick : components.get(i).picks()) {
        for (Way way : pick.ways().values()) {
          for (LeadDraft lead : way.leads()) {
            for (String spot : Spots.exclusive(lead)) {
              taken
                  .computeIfAbsent(spot, s -> new LinkedHashMap<>())
                  .merge(i, pick.region(), Region::or);
            }
          }
        }
      }
    }
    for (Map<Integer, Region> by : taken.values()) {
      List<Map.Entry<Integer, Region>> all = List.copyOf(by.entrySet());
      for (int i = 0; i < all.size(); i++) {
        for (int j = i + 1; j < all.size(); j++) {
          if (all.get(i).getValue().meets(all.get(j).getValue())) {
            return Optional.of(new TreeSet<>(Set.of(all.get(i).getKey(), all.get(j).getKey())));
          }
        }
      }
    }
    return Optional.empty();
  }

  // The sum of each component's worst case is an upper bound for every build; only where even that
  // bound fails do the components have to be planned together.
  private static Optional<Set<Integer>> overCapacity(List<Choice.Component> components) {
    Map<String, Double> limits = new TreeMap<>();
    Map<String, Map<Integer, Double>> worst = new TreeMap<>();
    for (int i = 0; i < components.size(); i++) {
      for (Choice.Pick pick : components.get(i).picks()) {
        Map<String, Double> sums = new TreeMap<>();
        for (Way way : pick.ways().values()) {
          for (Use use : way.uses()) {
            limits.put(use.resource(), use.limit());
            sums.merge(use.resource(), use.amount(), Double::sum);
          }
        }
        int component = i;
        sums.forEach(
            (resource, amount) ->
                worst
                    .computeIfAbsent(resource, r -> new LinkedHashMap<>())
                    .merge(component, amount, Math::max));
      }
    }
    for (Map.Entry<String, Map<Integer, Double>> one : worst.entrySet()) {
      double sum = one.getValue().values().stream().mapToDouble(Double::doubleValue).sum();
      if (one.getValue().size() > 1
          && sum > limits.getOrDefault(one.getKey(), Double.POSITIVE_INFINITY) + 1e-9) {
        return Optional.of(new LinkedHashSet<>(one.getValue().keySet()));
      }
    }
    return Optional.empty();
  }
}
