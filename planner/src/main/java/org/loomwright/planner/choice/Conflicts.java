package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.design.Unserved;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Demand;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** Tells why nothing can be chosen for a group: the smallest set of needs that can't be met. */
final class Conflicts {
  private final WaySolver solver;
  private final Map<NeedAt, List<Way>> ways;

  Conflicts(WaySolver solver, Map<NeedAt, List<Way>> ways) {
    this.solver = solver;
    this.ways = ways;
  }

  /** One entry per distinct conflict, with all builds it concerns. */
  List<Unserved> explain(List<Group> failed, List<NeedAt> needs) {
    Map<String, Region> regions = new LinkedHashMap<>();
    Map<String, List<NeedAt>> cores = new LinkedHashMap<>();
    Map<String, String> reasons = new LinkedHashMap<>();
    for (Group failure : failed) {
      // A way that is bound to fail a check is no help, so it must not hide what is really short.
      Group group = sound(failure);
      List<NeedAt> core = core(group, needs);
      String reason = reason(group, core);
      String key = core.stream().map(NeedAt::id).toList() + reason;
      regions.merge(key, group.region(), Region::or);
      cores.put(key, core);
      reasons.put(key, reason);
    }
    List<Unserved> unserved = new ArrayList<>();
    regions.forEach(
        (key, region) -> {
          Described described = Described.of(region);
          unserved.add(
              new Unserved(
                  described.words(),
                  described.when(),
                  region.count(),
                  cores.getOrDefault(key, List.of()).stream().map(NeedAt::id).toList(),
                  reasons.getOrDefault(key, "")));
        });
    return unserved;
  }

  private static Group sound(Group group) {
    Map<NeedAt, List<Way>> sound = new LinkedHashMap<>();
    group
        .ways()
        .forEach(
            (need, all) ->
                sound.put(need, all.stream().filter(way -> way.weak().isEmpty()).toList()));
    return new Group(group.region(), sound);
  }

  // Leaves out one need after the other as long as the rest still can't be met.
  private List<NeedAt> core(Group group, List<NeedAt> needs) {
    List<NeedAt> core = new ArrayList<>(needs);
    for (NeedAt need : needs) {
      List<NeedAt> rest = new ArrayList<>(core);
      rest.remove(need);
      if (!rest.isEmpty() && solver.solve(group, rest, Set.of(), Set.of()).isEmpty()) {
        core = rest;
      }
    }
    return core;
  }

  private String reason(Group group, List<NeedAt> core) {
    if (core.size() == 1) {
      NeedAt need = core.get(0);
      if (group.ways().getOrDefault(need, List.of()).isEmpty()) {
        return "no way to meet " + need.words() + ": " + whyNot(need, group.region());
      }
    }
    Set<String> spots = rivals(group, core);
    String what = String.join(" and ", core.stream().map(NeedAt::words).toList());
    return spots.isEmpty()
        ? "no set of ways meets these together: " + what
        : "two leads want " + String.join(", ", spots) + ": " + what;
  }

  private String whyNot(NeedAt need, Region region) {
    List<String> reasons = new ArrayList<>();
    for (Way way : ways.getOrDefault(need, List.of())) {
      String why =
          way.forbidden()
              .or(
                  () ->
                      way.demands().stream()
                          .filter(demand -> !region.meets(demand.holds()))
                          .map(Demand::otherwise)
                          .findFirst())
              .or(way::weak)
              .orElse("its conditions do not come together");
      reasons.add(way.words() + " (" + why + ")");
    }
    return reasons.isEmpty() ? "nothing on file could" : String.join("; ", reasons);
  }

  // Spots and capacities that at least two of the needs compete for.
  private static Set<String> rivals(Group group, List<NeedAt> core) {
    Map<String, Map<NeedAt, Set<String>>> wanted = new TreeMap<>();
    Map<String, Map<NeedAt, Double>> least = new TreeMap<>();
    Map<String, Use> capacity = new TreeMap<>();
    for (NeedAt need : core) {
      for (Way way : group.ways().getOrDefault(need, List.of())) {
        Spots.taken(way)
            .forEach(
                (spot, holder) ->
                    wanted
                        .computeIfAbsent(spot, s -> new LinkedHashMap<>())
                        .computeIfAbsent(need, n -> new LinkedHashSet<>())
                        .add(holder));
        for (Use use : way.uses()) {
          capacity.put(use.resource(), use);
          least
              .computeIfAbsent(use.resource(), r -> new LinkedHashMap<>())
              .merge(need, use.amount(), Math::min);
        }
      }
    }
    Set<String> rivals = new LinkedHashSet<>();
    wanted.forEach(
        (spot, needs) -> {
          Set<String> holders = new LinkedHashSet<>();
          needs.values().forEach(holders::addAll);
          if (needs.size() > 1 && holders.size() > 1) {
            rivals.add(spot);
          }
        });
    capacity.forEach(
        (resource, use) -> {
          double sum =
              least.getOrDefault(resource, Map.of()).values().stream()
                  .mapToDouble(Double::doubleValue)
                  .sum();
          if (sum > use.limit() + 1e-9) {
            rivals.add("more of " + use.words() + " than there is");
          }
        });
    return rivals;
  }
}
