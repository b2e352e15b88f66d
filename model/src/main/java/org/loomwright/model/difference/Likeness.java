package org.loomwright.model.difference;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** Finds which earlier item of a list without keys a later one was made from. */
final class Likeness {
  private Likeness() {}

  /**
   * The earlier item that shares most values; of equally good ones that in the same place, then the
   * first. Empty when none shares half of them.
   *
   * @param left places of the earlier items to choose from
   */
  static Optional<Integer> best(JsonNode item, List<Integer> left, List<JsonNode> was, int index) {
    Optional<Integer> best = Optional.empty();
    double most = 0;
    for (int place : left) {
      double share = share(was.get(place), item) + (place == index ? 0.01 : 0);
      if (share >= 0.5 && share > most) {
        most = share;
        best = Optional.of(place);
      }
    }
    return best;
  }

  /** Values in common, as share of the keys of both. */
  private static double share(JsonNode one, JsonNode two) {
    if (!one.isObject() || !two.isObject()) {
      return 0;
    }
    long common =
        one.properties().stream().filter(it -> it.getValue().equals(two.path(it.getKey()))).count();
    long near =
        one.properties().stream()
            .filter(it -> it.getValue().isContainer() && two.path(it.getKey()).isContainer())
            .filter(it -> !it.getValue().equals(two.path(it.getKey())))
            .count();
    double all = Math.max(1, Math.max(one.size(), two.size()));
    return (common + near / 2.0) / all;
  }
}
