package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.WayLine;

/** Needs met another way, and ways that opened or closed. */
final class WayChanges {
  private static final String NOW = "now ";
  private static final String BEFORE = "before ";

  private WayChanges() {}

  /** A need on a case met another way. */
  private record Other(String need, String caseId, String was, String is) {}

  /** Needs met another way. */
  static List<Change> used(Two two) {
    List<Other> others = new ArrayList<>();
    for (Family family : two.families()) {
      for (Family.Pair pair : family.gone().isEmpty() ? family.same() : List.<Family.Pair>of()) {
        pair.after()
            .ways()
            .forEach(
                (need, way) -> {
                  String old = pair.before().ways().getOrDefault(need, way);
                  String was = two.was().wayWords(old) + fate(two.is(), old, NOW);
                  String is = two.is().wayWords(way) + fate(two.was(), way, BEFORE);
                  if (!two.was().wayWords(old).equals(two.is().wayWords(way))) {
                    others.add(new Other(need, pair.after().id(), was, is));
                  }
                });
      }
      regrouped(two, family, others);
    }
    Map<List<String>, List<Other>> alike =
        others.stream()
            .collect(
                Collectors.groupingBy(
                    it -> List.of(it.was(), it.is()), LinkedHashMap::new, Collectors.toList()));
    return alike.values().stream().map(it -> Change.neutral(Topic.WAYS, words(two, it))).toList();
  }

  private static String words(Two two, List<Other> alike) {
    List<String> needs = alike.stream().map(it -> two.is().needName(it.need())).distinct().toList();
    List<String> cases = alike.stream().map(Other::caseId).distinct().toList();
    Other first = alike.get(0);
    String start = Words.list(needs) + " on " + PlanNames.cases(cases) + ": ";
    if (first.is().isEmpty()) {
      return Words.list(needs) + ": way no longer used: " + first.was();
    }
    return first.was().isEmpty()
        ? start + "a way not used before: " + first.is()
        : start + "now " + first.is() + ", was " + first.was();
  }

  /** Where cases came or went, the ways of each need are compared as sets. */
  private static void regrouped(Two two, Family family, List<Other> others) {
    List<Case> before = new ArrayList<>(family.gone());
    List<Case> after = new ArrayList<>(family.come());
    if (before.isEmpty()) {
      return;
    }
    family.same().forEach(it -> before.add(it.before()));
    family.same().forEach(it -> after.add(it.after()));
    Set<String> needs = new LinkedHashSet<>();
    after.forEach(it -> needs.addAll(it.ways().keySet()));
    for (String need : needs) {
      Map<String, String> was = ways(two.was(), before, need);
      Map<String, String> is = ways(two.is(), after, need);
      List<String> gone = was.keySet().stream().filter(it -> !is.containsKey(it)).toList();
      List<String> come = is.keySet().stream().filter(it -> !was.containsKey(it)).toList();
      for (String words : come) {
        String way = is.getOrDefault(words, "");
        String also = gone.size() == 1 && come.size() == 1 ? gone(two, was, gone.get(0)) : "";
        others.add(
            new Other(need, caseOf(after, need, way), also, words + fate(two.was(), way, BEFORE)));
      }
      if (gone.size() != 1 || come.size() != 1) {
        gone.forEach(it -> others.add(new Other(need, "", gone(two, was, it), "")));
      }
    }
  }

  private static String gone(Two two, Map<String, String> was, String words) {
    return words + fate(two.is(), was.getOrDefault(words, ""), NOW);
  }

  private static String caseOf(List<Case> cases, String need, String way) {
    return cases.stream()
        .filter(it -> way.equals(it.ways().get(need)))
        .map(Case::id)
        .findFirst()
        .orElse("");
  }

  /** Ways of a need by their words. */
  private static Map<String, String> ways(PlanNames names, List<Case> cases, String need) {
    Map<String, String> ways = new LinkedHashMap<>();
    for (Case one : cases) {
      String way = one.ways().get(need);
      if (way != null) {
        ways.putIfAbsent(names.wayWords(way), way);
      }
    }
    return ways;
  }

  /** What the other plan says of a way: ruled out with the reason, or not there at all. */
  private static String fate(PlanNames other, String way, String when) {
    Optional<WayLine> line = other.way(way);
    if (line.isEmpty()) {
      return when.equals(NOW) ? " (no longer there)" : " (new)";
    }
    return line.get()
        .forbidden()
        .map(it -> " (" + when + "ruled out: " + Words.cut(it) + ")")
        .orElse("");
  }

  /** Ways that no case used or uses, which opened or closed. */
  static List<Change> open(Two two) {
    List<WayLine> was =
        two.before().ways().stream().filter(it -> it.forbidden().isEmpty()).toList();
    List<WayLine> is = two.after().ways().stream().filter(it -> it.forbidden().isEmpty()).toList();
    List<Change> changes = new ArrayList<>();
    List<String> closed =
        unused(two.was(), was, ids(is), two.after().gap().stream().map(it -> it.need()).toList());
    List<String> opened =
        unused(two.is(), is, ids(was), two.before().gap().stream().map(it -> it.need()).toList());
    if (!closed.isEmpty()) {
      changes.add(
          Change.worse(Topic.WAYS, "no longer possible: " + Words.few(closed, two.detail())));
    }
    if (!opened.isEmpty()) {
      changes.add(Change.better(Topic.WAYS, "possible now: " + Words.few(opened, two.detail())));
    }
    return changes;
  }

  private static Set<String> ids(List<WayLine> ways) {
    return ways.stream().map(WayLine::id).collect(Collectors.toSet());
  }

  private static List<String> unused(
      PlanNames names, List<WayLine> ways, Set<String> elsewhere, List<String> needs) {
    Map<String, Set<String>> byWords = new LinkedHashMap<>();
    ways.stream()
        .filter(it -> !elsewhere.contains(it.id()))
        .filter(it -> it.cases().isEmpty() && needs.contains(it.need()))
        .forEach(
            it ->
                byWords
                    .computeIfAbsent(it.words(), words -> new LinkedHashSet<>())
                    .add(names.needName(it.need())));
    return byWords.entrySet().stream()
        .map(it -> it.getKey() + " for " + Words.list(List.copyOf(it.getValue())))
        .toList();
  }
}
