package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Checks that the rules of a vehicle leave at least one build, by trying all combinations of the
 * traits they mention. Where there are more than {@link #MOST_COMBINATIONS} it does nothing;
 * planning finds out then.
 */
final class RuleSet {
  private static final long MOST_COMBINATIONS = 1 << 16;

  private final Map<String, List<String>> traits;

  private RuleSet(Map<String, List<String>> traits) {
    this.traits = traits;
  }

  static void check(Scope scope, Vehicle vehicle, VehicleNames names) {
    List<Exclusion> rules = vehicle.rules();
    boolean readable =
        rules.stream()
            .allMatch(
                rule ->
                    scope.sound(rule)
                        && !rule.exclude().isUnknown()
                        && names.wrong(rule.exclude()).isEmpty());
    RuleSet set = new RuleSet(names.traits());
    if (!readable || rules.isEmpty() || !set.isSmall(rules) || set.leavesABuild(rules)) {
      return;
    }
    // Rules that are not needed for the contradiction would only distract.
    List<Exclusion> core = new ArrayList<>(rules);
    for (Exclusion rule : rules) {
      List<Exclusion> fewer = new ArrayList<>(core);
      fewer.remove(rule);
      if (!set.leavesABuild(fewer)) {
        core = fewer;
      }
    }
    String named =
        core.stream()
            .map(rule -> scope.path(rule) + " (" + rule.reason() + ")")
            .collect(Collectors.joining(" and "));
    scope.problem(
        vehicle,
        "rules",
        "",
        named
            + (core.size() == 1 ? " excludes" : " together exclude")
            + " every build, so there is no vehicle left; weaken "
            + (core.size() == 1 ? "it" : "one of them"));
  }

  private boolean isSmall(List<Exclusion> rules) {
    long combinations = 1;
    for (String trait : mentioned(rules)) {
      combinations *= Math.max(1, values(trait).size());
      if (combinations > MOST_COMBINATIONS) {
        return false;
      }
    }
    return true;
  }

  private boolean leavesABuild(List<Exclusion> rules) {
    return leavesABuild(rules, new ArrayList<>(mentioned(rules)), 0, new HashMap<>());
  }

  private boolean leavesABuild(
      List<Exclusion> rules, List<String> order, int at, Map<String, String> build) {
    if (at == order.size()) {
      return rules.stream().noneMatch(rule -> rule.exclude().holds(build));
    }
    for (String value : values(order.get(at))) {
      build.put(order.get(at), value);
      if (leavesABuild(rules, order, at + 1, build)) {
        return true;
      }
    }
    return false;
  }

  private List<String> values(String trait) {
    return traits.getOrDefault(trait, List.of());
  }

  private static SortedSet<String> mentioned(List<Exclusion> rules) {
    SortedSet<String> traits = new TreeSet<>();
    rules.forEach(rule -> traits.addAll(rule.exclude().traits()));
    return traits;
  }
}
