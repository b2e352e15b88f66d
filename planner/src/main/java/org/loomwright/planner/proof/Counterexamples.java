package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Step;

/**
 * The smallest counterexample of a claim: fewest trait values such that every possible build with
 * them goes against the claim. One finding that covers those builds is told where there is one,
 * otherwise the few that cover them together; among equals the earliest step counts.
 */
final class Counterexamples {
  private static final int MOST_TOLD = 3;

  private static final Comparator<Fault> EARLIEST =
      Comparator.comparingInt((Fault it) -> it.step().map(Step::number).orElse(Integer.MAX_VALUE))
          .thenComparing(Fault::what);

  private record Told(Fault fault, Fewest.Cube cube) {}

  private final Subject subject;
  private final Map<Region, Fewest.Cube> known = new HashMap<>();

  Counterexamples(Subject subject) {
    this.subject = subject;
  }

  /**
   * @param faults faults of one claim, at least one
   */
  Counterexample smallest(List<Fault> faults) {
    Told single =
        faults.stream()
            .map(it -> new Told(it, cube(it.builds())))
            .min(
                Comparator.comparingInt((Told it) -> it.cube().values().size())
                    .thenComparing(Told::fault, EARLIEST))
            .orElseThrow();
    Region union =
        faults.stream().map(Fault::builds).reduce(subject.facts().regions().none(), Region::or);
    Fewest.Cube together = cube(union);
    return together.values().size() < single.cube().values().size()
        ? told(together, covering(together, faults))
        : told(single.cube(), List.of(single.fault()));
  }

  /** Faults that together hold all builds of a cube, those that hold most of them first. */
  private List<Fault> covering(Fewest.Cube cube, List<Fault> faults) {
    List<Fault> told = new ArrayList<>();
    Region left = builds(cube);
    while (!left.isEmpty()) {
      Region now = left;
      Fault next =
          faults.stream()
              .max(
                  Comparator.comparing((Fault it) -> it.builds().and(now).count())
                      .thenComparing(EARLIEST.reversed()))
              .orElseThrow();
      told.add(next);
      left = left.minus(next.builds());
    }
    return told;
  }

  private Counterexample told(Fewest.Cube cube, List<Fault> faults) {
    BuildWords words = new BuildWords(subject.vehicle());
    List<String> parts = faults.stream().limit(MOST_TOLD).map(Fault::what).distinct().toList();
    String what =
        String.join("; on others of these builds ", parts)
            + (faults.size() > MOST_TOLD ? "; and so on" : "")
            + (cube.shortest() ? "" : " (the search for fewer trait values was cut short)");
    return new Counterexample(
        faults.get(0).claim().id(),
        words.values(cube),
        words.of(cube),
        builds(cube).count(),
        faults.get(0).stepWords(),
        what);
  }

  private Region builds(Fewest.Cube cube) {
    return cube.region(subject.facts().regions()).and(subject.possible());
  }

  private Fewest.Cube cube(Region builds) {
    return known.computeIfAbsent(builds, it -> Fewest.of(subject.possible(), it));
  }
}
