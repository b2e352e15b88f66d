package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What fitting involves, found by walking the guide with each build.
 *
 * @param vehicle the vehicle
 * @param walks steps taken on each build that comes to an end
 */
record WorkOracle(Vehicle vehicle, Map<Map<String, String>, List<Step>> walks) {
  /** Holds what is said of the work to the builds left that the kit is proven for. */
  void check(FitAnswer.Job said, List<Map<String, String>> proven) {
    double whole = 0;
    double minutes = 0;
    Map<String, Integer> opened = new TreeMap<>();
    int hard = 0;
    for (Map<String, String> build : proven) {
      double share = share(build);
      whole += share;
      List<Step> steps = walks.getOrDefault(build, List.of());
      minutes += share * steps.stream().mapToDouble(Step::minutes).sum();
      steps.stream()
          .flatMap(it -> it.act().stream())
          .filter(it -> it instanceof Act.Open)
          .map(it -> vehicle.opening(((Act.Open) it).opening()).orElseThrow().name())
          .distinct()
          .forEach(it -> opened.merge(it, 1, Integer::sum));
      hard +=
          steps.stream()
                  .anyMatch(
                      it ->
                          it.undo() == Undo.SPECIAL_TOOL
                              && it.act().isPresent()
                              && !(it.act().get() instanceof Act.Open))
              ? 1
              : 0;
    }
    if (proven.isEmpty() || whole == 0) {
      assertThat(said.minutes()).isEmpty();
      return;
    }
    assertThat(said.minutes().orElseThrow()).isEqualTo(minutes / whole, within(1e-6));
    Map<String, Boolean> openings = new TreeMap<>();
    opened.forEach((name, count) -> openings.put(name, count == proven.size()));
    Map<String, Boolean> told = new TreeMap<>();
    said.lines().stream()
        .filter(it -> it.kind() == Work.Kind.OPENING)
        .forEach(it -> told.put(it.words(), it.always()));
    assertThat(told).isEqualTo(openings);
    List<Boolean> special =
        said.lines().stream()
            .filter(it -> it.kind() == Work.Kind.SPECIAL_TOOL)
            .map(FitAnswer.Line::always)
            .toList();
    assertThat(special).isEqualTo(hard == 0 ? List.of() : List.of(hard == proven.size()));
  }

  private double share(Map<String, String> build) {
    double share = 1;
    for (Trait trait : vehicle.traits()) {
      share *=
          trait.values().stream()
              .filter(it -> it.id().equals(build.get(trait.id())))
              .mapToDouble(
                  it -> it.share().map(s -> s.fraction()).orElse(1.0 / trait.values().size()))
              .sum();
    }
    return share;
  }
}
