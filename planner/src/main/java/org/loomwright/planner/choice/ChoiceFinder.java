package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.Unserved;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Way;

/**
 * Chooses ways for every build without listing builds.
 *
 * <p>Needs start apart, linked only where they may share a lead. Each component is planned on its
 * own. If two components then want the same spot on some build, or a capacity might be exceeded,
 * exactly those are joined and planned again; so that needs with equal spots to choose from stay
 * apart, each component keeps clear of spots of those before it where that costs nothing. A plan of
 * the parts that fits together is the cheapest of the whole, because planning apart only leaves
 * limits out; an opening that two components need is counted in each.
 */
public final class ChoiceFinder {
  private final Map<NeedAt, List<Way>> ways;
  private final Region possible;
  private final WaySolver solver;

  /**
   * @param ways all ways of all needs
   * @param leadCost cost of a lead, paid once per build
   * @param openingCost cost to open and close an opening, paid once per build and component
   */
  public ChoiceFinder(
      Map<NeedAt, List<Way>> ways,
      Region possible,
      ToDoubleFunction<LeadDraft> leadCost,
      ToDoubleFunction<String> openingCost) {
    this.ways = new LinkedHashMap<>(ways);
    this.possible = possible;
    this.solver = new WaySolver(leadCost, openingCost);
  }

  /** Chooses. */
  public Choice find() {
    List<List<NeedAt>> parts = apart();
    Map<Task, Planned> known = new LinkedHashMap<>();
    while (true) {
      List<Planned> planned = new ArrayList<>();
      Set<String> taken = new TreeSet<>();
      for (List<NeedAt> part : parts) {
        Set<String> avoid = new TreeSet<>(taken);
        avoid.retainAll(spots(part.stream().flatMap(need -> waysOf(need).stream())));
        Planned plan = known.computeIfAbsent(new Task(part, avoid), this::plan);
        planned.add(plan);
        taken.addAll(
            spots(plan.component().picks().stream().flatMap(it -> it.ways().values().stream())));
      }
      Optional<Set<Integer>> clash =
          Clashes.find(planned.stream().map(Planned::component).toList());
      if (clash.isEmpty()) {
        return new Choice(
            planned.stream().map(Planned::component).toList(),
            planned.stream().flatMap(it -> it.unserved().stream()).toList());
      }
      parts = join(parts, clash.get());
    }
  }

  private record Task(List<NeedAt> needs, Set<String> avoid) {}

  private record Planned(Choice.Component component, List<Unserved> unserved) {}

  private List<Way> waysOf(NeedAt need) {
    return ways.getOrDefault(need, List.of());
  }

  private static Set<String> spots(Stream<Way> ways) {
    return ways.flatMap(way -> Spots.taken(way).keySet().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Planned plan(Task task) {
    List<NeedAt> needs = task.needs();
    List<Group> groups = Groups.of(needs, ways, possible);
    Map<Map<NeedAt, Way>, Region> picks = new LinkedHashMap<>();
    Set<String> liked = new HashSet<>();
    List<Group> failed = new ArrayList<>();
    // The most common builds first, so that rarer ones follow their choice on equal cost.
    List<Group> ordered =
        groups.stream()
            .sorted(Comparator.comparingDouble((Group it) -> -it.region().share()))
            .toList();
    for (Group group : ordered) {
      Optional<Map<NeedAt, Way>> best = solver.solve(group, needs, liked, task.avoid());
      if (best.isPresent()) {
        picks.merge(best.get(), group.region(), Region::or);
        best.get().values().stream()
            .flatMap(way -> way.leads().stream())
            .forEach(lead -> liked.add(lead.key()));
      } else {
        failed.add(group);
      }
    }
    List<Choice.Pick> list = new ArrayList<>();
    picks.forEach((chosen, region) -> list.add(new Choice.Pick(region, chosen)));
    return new Planned(
        new Choice.Component(needs, groups.size(), list),
        new Conflicts(solver, ways).explain(failed, needs));
  }

  private List<List<NeedAt>> apart() {
    List<NeedAt> all = List.copyOf(ways.keySet());
    List<List<NeedAt>> shared = Needs.shared(all);
    List<List<NeedAt>> parts = new ArrayList<>();
    Set<NeedAt> done = new LinkedHashSet<>();
    for (NeedAt need : all) {
      if (done.add(need)) {
        List<NeedAt> part =
            shared.stream().filter(it -> it.contains(need)).findFirst().orElse(List.of(need));
        done.addAll(part);
        parts.add(part);
      }
    }
    return parts;
  }

  private static List<List<NeedAt>> join(List<List<NeedAt>> parts, Set<Integer> together) {
    List<List<NeedAt>> joined = new ArrayList<>();
    List<NeedAt> one = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (together.contains(i)) {
        if (one.isEmpty()) {
          joined.add(one);
        }
        one.addAll(parts.get(i));
      } else {
        joined.add(parts.get(i));
      }
    }
    return joined.stream().map(List::copyOf).toList();
  }
}
