package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.vehicle.Trait;

/**
 * Builds told by a few traits, each with the values it may have.
 *
 * @param allowed trait to allowed values, in document order; empty means every build
 */
record Cube(SortedMap<String, List<String>> allowed) {
  Cube {
    allowed = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(allowed));
  }

  Region region(Builds builds) {
    Region region = builds.possible();
    for (Map.Entry<String, List<String>> one : allowed.entrySet()) {
      region = region.and(builds.where(one.getKey(), one.getValue()));
    }
    return region;
  }

  Cube with(String trait, List<String> values) {
    TreeMap<String, List<String>> more = new TreeMap<>(allowed);
    more.put(trait, values);
    return new Cube(more);
  }

  Cube without(String trait) {
    TreeMap<String, List<String>> less = new TreeMap<>(allowed);
    less.remove(trait);
    return new Cube(less);
  }

  /** Effort of reading it aloud: one per value named. */
  int size() {
    return allowed.values().stream().mapToInt(List::size).sum();
  }

  String words(Builds builds) {
    List<String> parts = new ArrayList<>();
    for (Trait trait : builds.traits().values()) {
      List<String> values = allowed.get(trait.id());
      if (values != null) {
        String any =
            trait.values().stream()
                .filter(value -> values.contains(value.id()))
                .map(value -> value.words())
                .collect(Collectors.joining(" or "));
        parts.add(values.size() > 1 && allowed.size() > 1 ? "either " + any : any);
      }
    }
    return parts.isEmpty() ? "every build" : String.join(" and ", parts);
  }

  Expr expr() {
    List<Expr> parts = new ArrayList<>();
    allowed.forEach(
        (trait, values) ->
            parts.add(
                values.size() == 1
                    ? new Expr.Is(trait, values.get(0))
                    : new Expr.In(trait, values)));
    return parts.isEmpty()
        ? Condition.always().expr()
        : parts.size() == 1 ? parts.get(0) : new Expr.And(parts);
  }
}
