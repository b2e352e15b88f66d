package org.loomwright.planner.proof;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Step;

/** The smallest counterexample of a claim: fewest trait values, then earliest step, then words. */
final class Counterexamples {
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
    Told told =
        faults.stream()
            .map(it -> new Told(it, cube(it.builds())))
            .min(
                Comparator.comparingInt((Told it) -> it.cube().values().size())
                    .thenComparingInt(
                        it -> it.fault().step().map(Step::number).orElse(Integer.MAX_VALUE))
                    .thenComparing(it -> it.fault().what()))
            .orElseThrow();
    BuildWords words = new BuildWords(subject.vehicle());
    Region builds = told.cube().region(subject.facts().regions()).and(subject.possible());
    String what = told.fault().what();
    return new Counterexample(
        told.fault().claim().id(),
        words.values(told.cube()),
        words.of(told.cube()),
        builds.count(),
        told.fault().stepWords(),
        told.cube().shortest()
            ? what
            : what
                + " (no trait value can be left out; fewer others were not looked for to the end)");
  }

  private Fewest.Cube cube(Region builds) {
    return known.computeIfAbsent(builds, it -> Fewest.of(subject.possible(), it));
  }
}
