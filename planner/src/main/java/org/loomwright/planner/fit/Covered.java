package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;

/**
 * Which builds a kit is proven for.
 *
 * <p>A build is covered when the plan has a way for every need, exactly one case of each component
 * holds, the guide leads it to an end by one way, and everything that the proof had to show on the
 * way was shown. That some other builds are not served leaves the obligation "cover" open and takes
 * nothing from those that are. Any other obligation left open, or a check that fails, covers none:
 * such a kit can't be released.
 */
final class Covered {
  /** The only obligation that builds without ways leave open; see {@code planner.proof}. */
  private static final String COVER = "cover";

  private final Plan plan;
  private final Builds builds;
  private final Map<String, Region> reach = new LinkedHashMap<>();
  private final Region refused;
  private Region twoWays;
  private final Region covered;
  private final Optional<String> held;

  /**
   * @throws IllegalArgumentException when the plan is not one of this vehicle
   */
  Covered(Plan plan, Builds builds) {
    this.plan = plan;
    this.builds = builds;
    Region none = builds.none();
    for (Unserved it : plan.unserved()) {
      none = none.or(builds.where(it.when()));
    }
    refused = none;
    twoWays = builds.none();
    Optional<String> why = why();
    Region found = builds.none();
    if (why.isEmpty()) {
      Region ended = walked();
      if (ended.count().equals(plan.proof().builds())) {
        found = ended.minus(twoWays).minus(refused).and(inOneCase());
      } else {
        why = Optional.of("its proof was made for other instructions");
      }
    }
    held = why;
    covered = found;
  }

  /** Builds for which the kit is proven. */
  Region covered() {
    return covered;
  }

  /** Builds for which there is no set of ways. */
  Region refused() {
    return refused;
  }

  /** Why nothing is promised at all; empty when something is. */
  Optional<String> held() {
    return held;
  }

  /** Builds that come to a step. */
  Region at(String step) {
    return reach.getOrDefault(step, builds.none());
  }

  /**
   * The covered builds each part number is sold to. Where several serve a build it gets the one
   * with the fewest leads, among equals the one named first, as the proof takes it.
   */
  Map<PartNumber, Region> boxes() {
    Map<PartNumber, Region> boxes = new LinkedHashMap<>();
    plan.design().partNumbers().forEach(number -> boxes.put(number, builds.none()));
    Region left = covered;
    for (PartNumber number :
        plan.design().partNumbers().stream()
            .sorted(java.util.Comparator.comparingInt(it -> it.leads().size()))
            .toList()) {
      Region served = left;
      for (List<Case> cases : components().values()) {
        Region any = builds.none();
        for (Case one : cases) {
          any = number.cases().contains(one.id()) ? any.or(builds.where(one.when())) : any;
        }
        served = served.and(any);
      }
      boxes.put(number, served);
      left = left.minus(served);
    }
    return boxes;
  }

  private Optional<String> why() {
    if (plan.worst() == Verdict.FAILS) {
      return Optional.of("a check of it fails");
    }
    List<Obligation> obligations = plan.proof().obligations();
    boolean shown =
        plan.proof().proven()
            || !obligations.isEmpty()
                && obligations.stream().allMatch(it -> it.shown() || it.id().equals(COVER));
    return shown ? Optional.empty() : Optional.of("its instructions are not proven");
  }

  // Builds that come to an end of the guide; where there are two ways on, the first is taken.
  private Region walked() {
    Map<String, List<Edge>> leaving = new HashMap<>();
    plan.guide()
        .edges()
        .forEach(it -> leaving.computeIfAbsent(it.from(), from -> new ArrayList<>()).add(it));
    reach.put(plan.guide().start(), builds.possible());
    Region ended = builds.none();
    for (String step : order(leaving)) {
      Region here = at(step);
      if (plan.guide().ends().contains(step)) {
        ended = ended.or(here);
        continue;
      }
      Region left = here;
      for (Edge edge : leaving.getOrDefault(step, List.of())) {
        Region when = builds.where(edge.when());
        twoWays = twoWays.or(here.minus(left).and(when));
        reach.merge(edge.to(), left.and(when), Region::or);
        left = left.minus(when);
      }
    }
    return ended;
  }

  // Each step after all steps that lead to it.
  private List<String> order(Map<String, List<Edge>> leaving) {
    List<String> after = new ArrayList<>();
    collect(plan.guide().start(), leaving, after, new HashSet<>(), new HashSet<>());
    java.util.Collections.reverse(after);
    return after;
  }

  private static void collect(
      String step,
      Map<String, List<Edge>> leaving,
      List<String> after,
      Set<String> done,
      Set<String> open) {
    if (done.contains(step)) {
      return;
    }
    if (!open.add(step)) {
      throw new IllegalArgumentException("the guide leads back to step '" + step + "'");
    }
    for (Edge edge : leaving.getOrDefault(step, List.of())) {
      collect(edge.to(), leaving, after, done, open);
    }
    open.remove(step);
    done.add(step);
    after.add(step);
  }

  private Region inOneCase() {
    Region all = builds.possible();
    for (List<Case> cases : components().values()) {
      Region one = builds.none();
      Region several = builds.none();
      for (Case it : cases) {
        Region when = builds.where(it.when());
        several = several.or(one.and(when));
        one = one.or(when);
      }
      all = all.and(one).minus(several);
    }
    return all;
  }

  private Map<String, List<Case>> components() {
    Map<String, List<Case>> components = new TreeMap<>();
    plan.cases()
        .forEach(it -> components.computeIfAbsent(it.component(), c -> new ArrayList<>()).add(it));
    return components;
  }
}
