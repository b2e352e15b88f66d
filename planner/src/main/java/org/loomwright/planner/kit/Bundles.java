package org.loomwright.planner.kit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.loomwright.model.vehicle.Run;

/** How many added leads lie together. */
final class Bundles {
  private final Map<String, Integer> perRun = new HashMap<>();

  Bundles(List<Strand> strands) {
    for (Strand strand : strands) {
      for (String run : new HashSet<>(strand.route().runs().stream().map(Run::id).toList())) {
        perRun.merge(run, 1, Integer::sum);
      }
    }
  }

  /** Leads in the thickest bundle the strand is part of, itself included. */
  int wires(Strand strand) {
    return strand.route().runs().stream()
        .mapToInt(run -> perRun.getOrDefault(run.id(), 1))
        .max()
        .orElse(1);
  }
}
