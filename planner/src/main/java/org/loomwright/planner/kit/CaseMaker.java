package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/**
 * Names the cases. Components that split the builds in the same way become one, and all needs that
 * get the same treatment on every build become one component with a single case.
 */
final class CaseMaker {
  private CaseMaker() {}

  static List<CaseSet> of(Choice choice) {
    Map<Set<Region>, List<Choice.Component>> alike = new LinkedHashMap<>();
    for (Choice.Component component : choice.components()) {
      Set<Region> split =
          component.picks().stream().map(Choice.Pick::region).collect(Collectors.toSet());
      alike.computeIfAbsent(split, s -> new ArrayList<>()).add(component);
    }
    // What is the same everywhere comes last: it is nothing to tell apart.
    List<List<Choice.Component>> ordered =
        alike.values().stream()
            .sorted(
                Comparator.comparing((List<Choice.Component> it) -> it.get(0).picks().size() == 1))
            .toList();
    List<CaseSet> sets = new ArrayList<>();
    for (List<Choice.Component> components : ordered) {
      sets.add(caseSet(letter(sets.size()), components));
    }
    return sets;
  }

  /** A, B … Z, AA, AB … */
  static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  private static CaseSet caseSet(String letter, List<Choice.Component> components) {
    List<NeedAt> needs = components.stream().flatMap(it -> it.needs().stream()).toList();
    Map<Region, Map<NeedAt, Way>> ways = new LinkedHashMap<>();
    for (Choice.Component component : components) {
      for (Choice.Pick pick : component.picks()) {
        ways.computeIfAbsent(pick.region(), r -> new LinkedHashMap<>()).putAll(pick.ways());
      }
    }
    record Draft(Region region, Described described, double share, Map<NeedAt, Way> ways) {}
    List<Draft> drafts =
        ways.entrySet().stream()
            .map(
                it ->
                    new Draft(
                        it.getKey(), Described.of(it.getKey()), it.getKey().share(), it.getValue()))
            .sorted(
                Comparator.comparingDouble((Draft it) -> -it.share())
                    .thenComparing(it -> it.described().when().text()))
            .toList();
    List<CaseSet.Member> members = new ArrayList<>();
    for (Draft draft : drafts) {
      Map<String, String> names = new LinkedHashMap<>();
      for (NeedAt need : needs) {
        Way way = draft.ways().get(need);
        if (way != null) {
          names.put(need.id(), way.id());
        }
      }
      Case info =
          new Case(
              letter + (members.size() + 1),
              letter,
              topic(needs),
              draft.described().words(),
              draft.described().when(),
              draft.region().count(),
              draft.share(),
              names);
      members.add(new CaseSet.Member(info, draft.region(), draft.ways()));
    }
    return new CaseSet(letter, needs, members);
  }

  // Pin names that several plugs share are told apart by their plug.
  private static String topic(List<NeedAt> needs) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    needs.forEach(
        need -> {
          if (!seen.add(need.topic())) {
            twice.add(need.topic());
          }
        });
    Set<String> topics = new LinkedHashSet<>();
    for (NeedAt need : needs) {
      topics.add(
          twice.contains(need.topic()) ? need.plug().name() + " " + need.topic() : need.topic());
    }
    return String.join(", ", topics);
  }
}
