package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Case;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.choice.Choice;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/**
 * Names the cases. A component that only splits the builds where another splits them too joins it,
 * which brings no more cases; all needs that get the same treatment on every build become one
 * component with a single case.
 */
final class CaseMaker {
  private static final int MOST_TOPICS = 4;

  private CaseMaker() {}

  static List<CaseSet> of(Choice choice) {
    List<Choice.Component> finest = new ArrayList<>();
    Map<Choice.Component, List<Choice.Component>> joined = new LinkedHashMap<>();
    List<Choice.Component> finestFirst =
        choice.components().stream()
            .sorted(Comparator.comparingInt((Choice.Component it) -> -it.picks().size()))
            .toList();
    for (Choice.Component component : finestFirst) {
      Choice.Component host =
          finest.stream().filter(it -> refines(it, component)).findFirst().orElse(component);
      if (host.equals(component)) {
        finest.add(component);
      }
      joined.computeIfAbsent(host, h -> new ArrayList<>()).add(component);
    }
    // In the order of the kit's needs; what is the same everywhere comes last, as it is nothing to
    // tell apart.
    List<Choice.Component> ordered =
        finest.stream()
            .sorted(
                Comparator.comparing((Choice.Component it) -> it.picks().size() == 1)
                    .thenComparingInt(it -> choice.components().indexOf(it)))
            .toList();
    Optional<Region> served = served(choice);
    List<CaseSet> sets = new ArrayList<>();
    for (Choice.Component host : ordered) {
      List<Choice.Component> members =
          joined.getOrDefault(host, List.of()).stream()
              .sorted(Comparator.comparingInt(choice.components()::indexOf))
              .toList();
      sets.add(caseSet(letter(sets.size()), host, members, served));
    }
    return sets;
  }

  // Builds on which every component has a way; empty when there are none.
  static Optional<Region> served(Choice choice) {
    return choice.components().stream()
        .flatMap(it -> it.picks().stream().map(Choice.Pick::region).reduce(Region::or).stream())
        .reduce(Region::and)
        .filter(it -> !it.isEmpty());
  }

  /** A, B … Z, AA, AB … */
  static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  // Whether each region of one lies within a region of the other, so that joining them brings no
  // more cases. What is the same everywhere stays apart, to be named as such.
  private static boolean refines(Choice.Component fine, Choice.Component coarse) {
    return fine.picks().size() > 1 == coarse.picks().size() > 1
        && fine.picks().stream()
            .allMatch(
                own -> coarse.picks().stream().anyMatch(it -> own.region().within(it.region())));
  }

  private static CaseSet caseSet(
      String letter,
      Choice.Component host,
      List<Choice.Component> components,
      Optional<Region> served) {
    List<NeedAt> needs = components.stream().flatMap(it -> it.needs().stream()).toList();
    Map<Region, Map<NeedAt, Way>> ways = new LinkedHashMap<>();
    for (Choice.Pick own : host.picks()) {
      // No kit is sold to builds on which something else can't be met, so nothing is made for them.
      if (served.isPresent() && !served.get().meets(own.region())) {
        continue;
      }
      Map<NeedAt, Way> all = new LinkedHashMap<>();
      for (Choice.Component component : components) {
        component.picks().stream()
            .filter(it -> own.region().within(it.region()))
            .forEach(it -> all.putAll(it.ways()));
      }
      ways.put(own.region(), all);
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
    List<String> all = List.copyOf(topics);
    return all.size() <= MOST_TOPICS
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, MOST_TOPICS - 1))
            + " and "
            + (all.size() - MOST_TOPICS + 1)
            + " more";
  }
}
