package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.List;

/**
 * The set of statements of least total size that covers a region, by depth-first search with a
 * bound on the number of nodes; the best set found when the bound is met.
 */
final class SmallestCover {
  private static final int MOST_NODES = 5_000;

  private final List<Cube> cubes;
  private final List<Region> regions = new ArrayList<>();
  private final Region target;
  private List<Cube> best;
  private int bestCost;
  private int nodes;

  SmallestCover(Region target, List<Cube> cubes) {
    this.target = target;
    this.cubes = cubes;
    for (Cube cube : cubes) {
      regions.add(cube.region(target.builds()));
    }
    best = greedy();
    bestCost = cost(best);
  }

  List<Cube> find() {
    search(target, new ArrayList<>());
    return best;
  }

  private void search(Region open, List<Cube> chosen) {
    if (nodes++ > MOST_NODES) {
      return;
    }
    int cost = cost(chosen);
    if (open.isEmpty()) {
      if (cost < bestCost) {
        best = List.copyOf(chosen);
        bestCost = cost;
      }
      return;
    }
    if (cost + 2 > bestCost) {
      return;
    }
    // Some statement must cover this build, so branching on it alone is complete.
    Region picked = pick(open);
    for (int i = 0; i < cubes.size(); i++) {
      if (picked.within(regions.get(i))) {
        chosen.add(cubes.get(i));
        search(open.minus(regions.get(i)), chosen);
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  // The single build that the sample names, as a region.
  private static Region pick(Region region) {
    Region build = region;
    for (var entry : region.sample().entrySet()) {
      build = build.and(region.builds().where(entry.getKey(), List.of(entry.getValue())));
    }
    return build;
  }

  private List<Cube> greedy() {
    List<Cube> chosen = new ArrayList<>();
    Region open = target;
    while (!open.isEmpty()) {
      int pick = -1;
      double most = -1;
      for (int i = 0; i < cubes.size(); i++) {
        double gain = open.and(regions.get(i)).count().doubleValue() / (1 + cubes.get(i).size());
        if (gain > most) {
          most = gain;
          pick = i;
        }
      }
      chosen.add(cubes.get(pick));
      open = open.minus(regions.get(pick));
    }
    return chosen;
  }

  // Statements cost one each beside their values, so that few are preferred over many.
  private static int cost(List<Cube> chosen) {
    return chosen.stream().mapToInt(cube -> 1 + cube.size()).sum();
  }
}
