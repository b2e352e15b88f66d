package org.loomwright.planner.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.assertj.core.data.Offset;
import org.loomwright.model.design.Unserved;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/** The choice for each build against trying every set of ways. */
class ChoiceOracleTest {
  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void everyBuildGetsACheapestSetOrAReason(@ForAll long seed) {
    Puzzle puzzle = new Puzzle(seed);
    Choice choice =
        new ChoiceFinder(
                puzzle.ways, puzzle.builds.possible(), puzzle::leadCost, Puzzle::openingCost)
            .find();
    Set<Map<String, String>> all = AllBuilds.of(puzzle.vehicle);
    Map<Map<String, String>, Region> points = AllBuilds.points(puzzle.builds, all);
    List<NeedAt> needs = List.copyOf(puzzle.ways.keySet());
    Map<Map<NeedAt, List<Way>>, Optional<Double>> known = new HashMap<>();
    List<List<NeedAt>> components =
        choice.components().stream().map(Choice.Component::needs).toList();
    int served = 0;
    boolean contested = false;
    for (Map<String, String> build : all) {
      Region point = points.getOrDefault(build, puzzle.builds.none());
      Map<NeedAt, List<Way>> open = open(puzzle.ways, point);
      Trial trial = new Trial(open, puzzle::leadCost, Puzzle::openingCost, components);
      Optional<Double> best = known.computeIfAbsent(open, key -> trial.best(needs));
      List<Unserved> against =
          choice.unserved().stream().filter(it -> it.when().holds(build)).toList();
      assertThat(against.isEmpty()).as("served %s", build).isEqualTo(best.isPresent());
      for (Unserved one : against) {
        checkCore(one, needs, trial);
      }
      if (best.isPresent()) {
        served++;
        Map<NeedAt, Way> chosen = chosen(choice, point);
        assertThat(chosen.keySet()).containsExactlyInAnyOrderElementsOf(needs);
        chosen.forEach((need, way) -> assertThat(open.get(need)).contains(way));
        assertThat(Trial.fits(chosen.values())).as("fits on %s", build).isTrue();
        // Costs are whole thousandths in the solver, and one more for a lead not used elsewhere.
        double slack =
            0.001 * chosen.values().stream().mapToInt(it -> 1 + 2 * it.leads().size()).sum()
                + 0.001 * 5 * needs.size();
        assertThat(trial.cost(chosen.values())).isCloseTo(best.get(), Offset.offset(slack));
        contested |= !Trial.fits(eachAlone(needs, open, trial).values());
      }
    }
    checkShape(choice, needs);
    Statistics.label("some builds served, some not")
        .collect(served > 0 && served < all.size())
        .coverage(c -> c.check(true).percentage(p -> p > 8));
    Statistics.label("the cheapest ways of the needs alone do not fit together")
        .collect(contested)
        .coverage(c -> c.check(true).percentage(p -> p > 12));
    Statistics.label("several picks")
        .collect(choice.components().stream().anyMatch(it -> it.picks().size() > 1))
        .coverage(c -> c.check(true).percentage(p -> p > 15));
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void theSameInputGivesTheSameChoice(@ForAll long seed) {
    List<String> first = told(new Puzzle(seed));
    assertThat(told(new Puzzle(seed))).isEqualTo(first);
  }

  private static List<String> told(Puzzle puzzle) {
    Choice choice =
        new ChoiceFinder(
                puzzle.ways, puzzle.builds.possible(), puzzle::leadCost, Puzzle::openingCost)
            .find();
    List<String> told = new ArrayList<>();
    for (Choice.Component component : choice.components()) {
      for (Choice.Pick pick : component.picks()) {
        told.add(pick.region() + ": " + pick.ways().values().stream().map(Way::id).toList());
      }
    }
    choice.unserved().forEach(it -> told.add(it.toString()));
    return told;
  }

  private static void checkCore(Unserved unserved, List<NeedAt> needs, Trial trial) {
    List<NeedAt> core =
        needs.stream().filter(need -> unserved.needs().contains(need.id())).toList();
    assertThat(core).hasSameSizeAs(unserved.needs()).isNotEmpty();
    assertThat(trial.best(core)).as("%s together", unserved.needs()).isEmpty();
    for (NeedAt need : core) {
      List<NeedAt> rest = core.stream().filter(it -> !it.equals(need)).toList();
      assertThat(trial.best(rest)).as("%s without %s", unserved.needs(), need.id()).isPresent();
    }
    assertThat(unserved.reason()).isNotBlank();
  }

  private static void checkShape(Choice choice, List<NeedAt> needs) {
    assertThat(choice.components().stream().flatMap(it -> it.needs().stream()).toList())
        .containsExactlyInAnyOrderElementsOf(needs);
    for (Choice.Component component : choice.components()) {
      List<Choice.Pick> picks = component.picks();
      for (int i = 0; i < picks.size(); i++) {
        for (int j = i + 1; j < picks.size(); j++) {
          assertThat(picks.get(i).region().meets(picks.get(j).region())).isFalse();
          assertThat(picks.get(i).ways()).isNotEqualTo(picks.get(j).ways());
        }
      }
      assertThat(component.groups()).isGreaterThanOrEqualTo(picks.size());
    }
  }

  private static Map<NeedAt, List<Way>> open(Map<NeedAt, List<Way>> ways, Region point) {
    Map<NeedAt, List<Way>> open = new LinkedHashMap<>();
    ways.forEach(
        (need, all) ->
            open.put(
                need,
                all.stream()
                    .filter(it -> it.forbidden().isEmpty() && point.meets(it.when()))
                    .toList()));
    return open;
  }

  private static Map<NeedAt, Way> chosen(Choice choice, Region point) {
    Map<NeedAt, Way> chosen = new LinkedHashMap<>();
    for (Choice.Component component : choice.components()) {
      component.picks().stream()
          .filter(it -> it.region().meets(point))
          .forEach(it -> chosen.putAll(it.ways()));
    }
    return chosen;
  }

  private static Map<NeedAt, Way> eachAlone(
      List<NeedAt> needs, Map<NeedAt, List<Way>> open, Trial trial) {
    Map<NeedAt, Way> alone = new LinkedHashMap<>();
    for (NeedAt need : needs) {
      open.getOrDefault(need, List.of()).stream()
          .filter(way -> Trial.fits(List.of(way)))
          .min(java.util.Comparator.comparingDouble(way -> trial.cost(List.of(way))))
          .ifPresent(way -> alone.put(need, way));
    }
    return alone;
  }
}
