package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Walker;

/** What a fit check has to say, found by going through all builds one by one. */
final class FitOracle {
  private final KitOrder order;
  private final Plan plan;
  private final FitCheck check;
  private final Set<Map<String, String>> all;
  private final Map<Map<String, String>, Integer> wiring = new LinkedHashMap<>();
  private final Map<Map<String, String>, List<Step>> walks = new HashMap<>();

  FitOracle(KitOrder order, Plan plan, FitCheck check) {
    this.order = order;
    this.plan = plan;
    this.check = check;
    this.all = AllBuilds.of(order.vehicle());
    boolean sound =
        plan.worst() != Verdict.FAILS
            && (plan.proof().proven()
                || plan.proof().obligations().stream()
                    .allMatch(it -> it.shown() || it.id().equals("cover")));
    for (Map<String, String> build : all) {
      boolean unserved = plan.unserved().stream().anyMatch(it -> it.when().holds(build));
      wiring.put(build, unserved ? 1 : sound && walks(build) ? 0 : 2);
    }
  }

  private boolean walks(Map<String, String> build) {
    Map<String, Long> cases =
        plan.cases().stream()
            .filter(it -> it.when().holds(build))
            .collect(Collectors.groupingBy(Case::component, Collectors.counting()));
    Set<String> components = plan.cases().stream().map(Case::component).collect(Collectors.toSet());
    if (!cases.keySet().equals(components) || cases.values().stream().anyMatch(it -> it != 1)) {
      return false;
    }
    walks.put(build, Walker.walk(plan.guide(), build));
    return true;
  }

  Set<Map<String, String>> all() {
    return all;
  }

  /** 0 proven, 1 not served, 2 served and not proven. */
  int wiring(Map<String, String> build) {
    return Optional.ofNullable(wiring.get(build)).orElseThrow();
  }

  Set<Map<String, String>> matching(Map<String, String> answers) {
    return all.stream()
        .filter(build -> build.entrySet().containsAll(answers.entrySet()))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Holds the questions to what a customer can do. */
  void checkQuestions() {
    for (FitQuestion question : check.questions()) {
      Trait trait = trait(question.id());
      boolean outside =
          trait.tell().how() == TellHow.ASK_OWNER
              || trait.tell().how() == TellHow.LOOK && trait.tell().openings().isEmpty();
      assertThat(outside).as(question.id()).isTrue();
      assertThat(question.decides()).as(question.id()).isNotEmpty();
      assertThat(question.options().stream().mapToDouble(FitQuestion.Option::share).sum())
          .isEqualTo(1, within(1e-9));
    }
  }

  /** What is not asked could not have helped: a customer who tells more learns nothing more. */
  void checkNothingLost() {
    List<String> outside =
        order.vehicle().traits().stream()
            .filter(
                it ->
                    it.tell().how() == TellHow.ASK_OWNER
                        || it.tell().how() == TellHow.LOOK && it.tell().openings().isEmpty())
            .map(Trait::id)
            .toList();
    List<String> asked = check.questions().stream().map(FitQuestion::id).toList();
    Map<Map<String, String>, Set<Integer>> byAll = new HashMap<>();
    Map<Map<String, String>, Set<Integer>> byAsked = new HashMap<>();
    for (Map<String, String> build : all) {
      byAll.computeIfAbsent(only(build, outside), k -> new LinkedHashSet<>()).add(wiring(build));
      byAsked.computeIfAbsent(only(build, asked), k -> new LinkedHashSet<>()).add(wiring(build));
    }
    for (Map<String, String> build : all) {
      assertThat(byAsked.get(only(build, asked))).isEqualTo(byAll.get(only(build, outside)));
    }
  }

  /** Holds one answer to all builds that remain. */
  void check(Map<String, String> answers) {
    FitAnswer said = check.answer(answers);
    Set<Map<String, String>> left = matching(answers);
    if (left.isEmpty()) {
      conflict(said, answers);
      return;
    }
    assertThat(said.conflict()).as("%s", answers).isEmpty();
    part(answers, said.wiring(), left, this::wiring);
    demands(answers, said.modules(), left, Equipment::modules);
    demands(answers, said.coding(), left, Equipment::coding);
    refusals(said.wiring(), left);
    number(answers, said.number(), left);
    new WorkOracle(order.vehicle(), walks)
        .check(said.work(), left.stream().filter(it -> wiring(it) == 0).toList());
  }

  private void conflict(FitAnswer said, Map<String, String> answers) {
    assertThat(said.wiring().outcome()).isEqualTo(Outcome.OPEN);
    assertThat(said.modules().outcome()).isEqualTo(Outcome.OPEN);
    assertThat(said.coding().outcome()).isEqualTo(Outcome.OPEN);
    assertThat(said.number().possible()).isEmpty();
    assertThat(said.work().minutes()).isEmpty();
    Map<String, String> together = only(answers, said.conflict());
    assertThat(together).hasSameSizeAs(said.conflict()).isNotEmpty();
    assertThat(matching(together)).as("conflict %s", together).isEmpty();
    for (String one : said.conflict()) {
      Map<String, String> fewer = new LinkedHashMap<>(together);
      fewer.remove(one);
      assertThat(matching(fewer)).as("without %s of %s", one, together).isNotEmpty();
    }
  }

  private void part(
      Map<String, String> answers,
      FitAnswer.Part said,
      Set<Map<String, String>> left,
      Function<Map<String, String>, Integer> outcome) {
    Set<Integer> classes = left.stream().map(outcome).collect(Collectors.toSet());
    Outcome expected =
        classes.equals(Set.of(0))
            ? Outcome.FITS
            : classes.equals(Set.of(1)) ? Outcome.DOES_NOT : Outcome.OPEN;
    assertThat(said.outcome()).as("%s of %s", answers, classes).isEqualTo(expected);
    deciding(answers, said.deciding(), left, outcome);
  }

  private void deciding(
      Map<String, String> answers,
      FitAnswer.Deciding said,
      Set<Map<String, String>> left,
      Function<Map<String, String>, Integer> outcome) {
    Set<Integer> classes = left.stream().map(outcome).collect(Collectors.toSet());
    if (classes.size() < 2) {
      assertThat(said).isEqualTo(FitAnswer.Deciding.NOTHING);
      return;
    }
    List<String> asked = check.questions().stream().map(FitQuestion::id).toList();
    assertThat(said.questions()).isSubsetOf(asked).noneMatch(answers::containsKey);
    assertThat(said.traits()).noneMatch(asked::contains);
    List<String> both = new ArrayList<>(said.questions());
    both.addAll(said.traits());
    assertThat(decides(both, left, outcome)).as("%s decide after %s", said, answers).isTrue();
    // No smaller set of what was not asked does, even with every question answered.
    List<String> others =
        order.vehicle().traits().stream().map(Trait::id).filter(it -> !asked.contains(it)).toList();
    for (int mask = 0; mask < 1 << others.size(); mask++) {
      if (Integer.bitCount(mask) < said.traits().size()) {
        List<String> some = new ArrayList<>(asked);
        for (int i = 0; i < others.size(); i++) {
          if ((mask >> i & 1) == 1) {
            some.add(others.get(i));
          }
        }
        assertThat(decides(some, left, outcome)).as("%s instead of %s", some, said).isFalse();
      }
    }
  }

  private static boolean decides(
      Collection<String> traits,
      Set<Map<String, String>> left,
      Function<Map<String, String>, Integer> outcome) {
    Map<Map<String, String>, Integer> seen = new HashMap<>();
    for (Map<String, String> build : left) {
      Integer before = seen.putIfAbsent(only(build, traits), outcome.apply(build));
      if (before != null && !before.equals(outcome.apply(build))) {
        return false;
      }
    }
    return true;
  }

  private void demands(
      Map<String, String> answers,
      FitAnswer.Part said,
      Set<Map<String, String>> left,
      Function<Equipment, List<Demand>> kind) {
    List<Demand> demands =
        order.equipment().stream().flatMap(it -> kind.apply(it).stream()).toList();
    part(
        answers,
        said,
        left,
        build -> demands.stream().allMatch(it -> it.metWhen().holds(build)) ? 0 : 1);
    assertThat(said.reasons()).hasSameSizeAs(demands);
    for (int i = 0; i < demands.size(); i++) {
      Demand demand = demands.get(i);
      long met = left.stream().filter(build -> demand.metWhen().holds(build)).count();
      assertThat(said.reasons().get(i))
          .isEqualTo(
              new FitAnswer.Reason(
                  met == left.size() ? Outcome.FITS : met == 0 ? Outcome.DOES_NOT : Outcome.OPEN,
                  i));
    }
  }

  private void refusals(FitAnswer.Part said, Set<Map<String, String>> left) {
    List<FitAnswer.Reason> expected = new ArrayList<>();
    for (int i = 0; i < plan.unserved().size(); i++) {
      var it = plan.unserved().get(i);
      long concerned = left.stream().filter(build -> it.when().holds(build)).count();
      if (concerned > 0) {
        expected.add(
            new FitAnswer.Reason(concerned == left.size() ? Outcome.DOES_NOT : Outcome.OPEN, i));
      }
    }
    assertThat(said.reasons()).isEqualTo(expected);
  }

  private void number(
      Map<String, String> answers, FitAnswer.Number said, Set<Map<String, String>> left) {
    List<String> ids = plan.design().partNumbers().stream().map(PartNumber::id).toList();
    Function<Map<String, String>, Integer> sold =
        build -> box(build).map(ids::indexOf).orElse(ids.size());
    Set<Integer> classes = left.stream().map(sold).collect(Collectors.toSet());
    assertThat(said.possible())
        .isEqualTo(ids.stream().filter(it -> classes.contains(ids.indexOf(it))).toList());
    assertThat(said.none()).isEqualTo(classes.contains(ids.size()));
    deciding(answers, said.deciding(), left, sold);
  }

  // The smallest box that holds what all cases of the build use.
  private Optional<String> box(Map<String, String> build) {
    if (wiring(build) != 0) {
      return Optional.empty();
    }
    return plan.design().partNumbers().stream()
        .filter(
            number ->
                plan.cases().stream()
                    .filter(it -> it.when().holds(build))
                    .allMatch(it -> number.cases().contains(it.id())))
        .min(Comparator.comparingInt(it -> it.leads().size()))
        .map(PartNumber::id);
  }

  private Trait trait(String id) {
    return order.vehicle().traits().stream()
        .filter(it -> it.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, String> only(Map<String, String> build, Collection<String> traits) {
    Map<String, String> some = new TreeMap<>(build);
    some.keySet().retainAll(traits);
    return some;
  }
}
