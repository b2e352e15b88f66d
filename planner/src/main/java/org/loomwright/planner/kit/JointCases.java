package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/**
 * Which cases stand together electrically: components whose loads return through one another's
 * grounds are taken together, case by case where some build has both. What all others draw and
 * return is taken at its worst, so that no product over all components is needed.
 */
final class JointCases {
  /** Most joint cases looked at for one group of components. */
  static final int MOST = 2_000;

  private final List<Group> groups = new ArrayList<>();

  /**
   * One case per component of a group.
   *
   * @param members the cases
   * @param others worst current of all other groups through each section and stud, A
   */
  record Tuple(List<CaseSet.Member> members, Map<String, Double> others) {
    Tuple {
      members = List.copyOf(members);
      // In their order, which is that of the network's elements.
      others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
    }

    List<String> ids() {
      return members.stream().map(CaseSet.Member::id).toList();
    }

    Map<NeedAt, Way> ways() {
      Map<NeedAt, Way> ways = new LinkedHashMap<>();
      members.forEach(member -> ways.putAll(member.ways()));
      return ways;
    }
  }

  /**
   * Components taken together.
   *
   * @param members one list of cases per combination some build has
   * @param left whether more combinations than {@link #MOST} were left out
   */
  private record Group(List<List<CaseSet.Member>> members, boolean left) {}

  JointCases(List<CaseSet> sets) {
    for (List<CaseSet> together : together(sets)) {
      groups.add(group(together));
    }
  }

  /** Whether every combination was taken. */
  boolean complete() {
    return groups.stream().noneMatch(Group::left);
  }

  /** All joint cases, group by group. */
  List<Tuple> all() {
    List<Map<String, Double>> worst = groups.stream().map(JointCases::worst).toList();
    List<Tuple> tuples = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      Map<String, Double> others = new LinkedHashMap<>();
      for (int j = 0; j < groups.size(); j++) {
        if (j != i) {
          worst.get(j).forEach((resource, a) -> others.merge(resource, a, Double::sum));
        }
      }
      groups.get(i).members().forEach(members -> tuples.add(new Tuple(members, others)));
    }
    return tuples;
  }

  private static Map<String, Double> worst(Group group) {
    Map<String, Double> worst = new LinkedHashMap<>();
    for (List<CaseSet.Member> members : group.members()) {
      Map<String, Double> here = new LinkedHashMap<>();
      for (CaseSet.Member member : members) {
        for (Way way : member.ways().values()) {
          for (Use use : way.uses()) {
            if (use.resource().startsWith("section ") || use.resource().endsWith(" current")) {
              here.merge(use.resource(), use.amount(), Double::sum);
            }
          }
        }
      }
      here.forEach((resource, a) -> worst.merge(resource, a, Math::max));
    }
    return worst;
  }

  private static Group group(List<CaseSet> together) {
    record Part(List<CaseSet.Member> members, Optional<Region> builds) {}
    List<Part> parts = List.of(new Part(List.of(), Optional.empty()));
    boolean left = false;
    for (CaseSet set : together) {
      List<Part> longer = new ArrayList<>();
      for (Part part : parts) {
        for (CaseSet.Member member : set.members()) {
          Region builds =
              part.builds().map(it -> it.and(member.region())).orElseGet(member::region);
          if (!builds.isEmpty()) {
            List<CaseSet.Member> members = new ArrayList<>(part.members());
            members.add(member);
            longer.add(new Part(members, Optional.of(builds)));
          }
        }
      }
      left |= longer.size() > MOST;
      parts = longer.subList(0, Math.min(longer.size(), MOST));
    }
    return new Group(parts.stream().map(Part::members).toList(), left);
  }

  // Sets joined by the ground of a load, directly or over others.
  private static List<List<CaseSet>> together(List<CaseSet> sets) {
    List<NeedAt> all = sets.stream().flatMap(set -> set.needs().stream()).toList();
    List<Set<CaseSet>> groups = new ArrayList<>();
    for (CaseSet set : sets) {
      Set<CaseSet> joined = new LinkedHashSet<>(Set.of(set));
      for (CaseSet other : sets) {
        if (linked(set, other, all) || linked(other, set, all)) {
          joined.add(other);
        }
      }
      groups.removeIf(
          group -> {
            boolean meets = group.stream().anyMatch(joined::contains);
            if (meets) {
              joined.addAll(group);
            }
            return meets;
          });
      groups.add(joined);
    }
    return groups.stream().map(group -> sets.stream().filter(group::contains).toList()).toList();
  }

  private static boolean linked(CaseSet set, CaseSet other, List<NeedAt> all) {
    return set.needs().stream()
        .flatMap(need -> Returns.of(need, all).stream())
        .anyMatch(other.needs()::contains);
  }
}
