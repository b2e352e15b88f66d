package org.loomwright.planner.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;

/**
 * Follows the guide of a plan on a vehicle of which some traits are known. All builds that agree
 * with the answers go at once, so that answers the vehicle's rules imply need not be given, and
 * questions left open show what depends on them.
 */
public final class GuideWalk {
  private final Plan plan;
  private final Builds builds;
  private final Map<String, String> answers;
  private final Region left;
  private final Region served;
  private final Map<String, Region> reached = new LinkedHashMap<>();

  private GuideWalk(Plan plan, Builds builds, Map<String, String> answers) {
    this.plan = plan;
    this.builds = builds;
    this.answers = new LinkedHashMap<>(answers);
    this.answers.entrySet().removeIf(it -> !isKnown(it.getKey(), it.getValue()));
    this.left = leftBy(this.answers);
    Region rest = left;
    for (Unserved it : plan.unserved()) {
      rest = rest.minus(builds.where(it.when()));
    }
    this.served = rest;
    walk();
  }

  /**
   * The walk on builds with these answers.
   *
   * @param vehicle vehicle of the plan's order, its unknown facts turned into traits
   * @param answers trait to value; what is no trait or value of the vehicle is passed over
   */
  public static GuideWalk of(Plan plan, Vehicle vehicle, Map<String, String> answers) {
    return new GuideWalk(plan, Builds.of(vehicle), answers);
  }

  private boolean isKnown(String trait, String value) {
    Trait known = builds.traits().get(trait);
    return known != null && known.values().stream().map(TraitValue::id).anyMatch(value::equals);
  }

  private Region leftBy(Map<String, String> said) {
    Region region = builds.possible();
    for (Map.Entry<String, String> it : said.entrySet()) {
      region = region.and(builds.where(it.getKey(), List.of(it.getValue())));
    }
    return region;
  }

  /** Steps in printed order come after all that lead to them. */
  private void walk() {
    if (served.isEmpty()) {
      return;
    }
    reached.put(plan.guide().start(), served);
    for (Step step : plan.guide().steps()) {
      Region here = reached.getOrDefault(step.id(), builds.none());
      if (here.isEmpty()) {
        continue;
      }
      for (Edge edge : plan.guide().from(step.id())) {
        Region going = here.and(builds.where(edge.when()));
        if (!going.isEmpty()) {
          reached.merge(edge.to(), going, Region::or);
        }
      }
    }
  }

  /**
   * A step that is on the way.
   *
   * @param step the step
   * @param certain whether every vehicle with these answers comes to it; else an answer that is
   *     still open decides
   */
  public record Stage(Step step, boolean certain) {}

  /** Whether the vehicle's rules allow a build with these answers. */
  public boolean isPossible() {
    return !left.isEmpty();
  }

  /** Whether the kit serves a build with these answers. */
  public boolean isServed() {
    return !served.isEmpty();
  }

  /** Builds with these answers that the kit does not serve. */
  public List<Unserved> unserved() {
    return plan.unserved().stream().filter(it -> left.meets(builds.where(it.when()))).toList();
  }

  /** Steps that builds with these answers come to, in printed order. */
  public List<Stage> stages() {
    return plan.guide().steps().stream()
        .filter(it -> reached.containsKey(it.id()))
        .map(it -> new Stage(it, served.equals(reached.getOrDefault(it.id(), builds.none()))))
        .toList();
  }

  /** Questions on the way, answered ones too. */
  public List<Step> questions() {
    return stages().stream().map(Stage::step).filter(it -> it.ask().isPresent()).toList();
  }

  /** Whether a question is answered. */
  public boolean isAnswered(Step question) {
    return question.ask().filter(it -> answers.containsKey(it.trait())).isPresent();
  }

  /**
   * The way as far as it is known: the steps up to the first question that is still open, that
   * question last. The whole way when none is.
   */
  public List<Step> way() {
    List<Step> way = new ArrayList<>();
    for (Stage it : stages()) {
      if (!it.certain()) {
        break;
      }
      way.add(it.step());
      if (it.step().ask().isPresent() && !isAnswered(it.step())) {
        break;
      }
    }
    return way;
  }

  /** The first question of the way that is still open. */
  public Optional<Step> openQuestion() {
    return questions().stream().filter(it -> !isAnswered(it)).findFirst();
  }

  /**
   * Values of a trait that a build can have as far as the other answers tell. Others contradict the
   * vehicle's rules.
   */
  public List<String> possible(String trait) {
    Map<String, String> others = new LinkedHashMap<>(answers);
    others.remove(trait);
    return leftBy(others).values(trait);
  }

  /** Whether a condition holds on every build with these answers that the kit serves. */
  public boolean holds(Condition when) {
    return isServed() && served.within(builds.where(when));
  }

  /** Whether a condition holds on some build with these answers that the kit serves. */
  public boolean canHold(Condition when) {
    return served.meets(builds.where(when));
  }

  /** Cases that builds with these answers can have: one of a component when it is decided. */
  public List<Case> cases() {
    return plan.cases().stream().filter(it -> canHold(it.when())).toList();
  }

  /** Cases that are decided: every build with these answers has them. */
  public List<Case> decidedCases() {
    return plan.cases().stream().filter(it -> holds(it.when())).toList();
  }

  /** Part numbers that serve every build with these answers. */
  public List<PartNumber> fitting() {
    return plan.design().partNumbers().stream().filter(it -> served.within(sold(it))).toList();
  }

  /** Part numbers that serve some build with these answers. */
  public List<PartNumber> possibleNumbers() {
    return plan.design().partNumbers().stream().filter(it -> served.meets(sold(it))).toList();
  }

  private Region sold(PartNumber number) {
    Map<String, Region> byComponent = new LinkedHashMap<>();
    for (Case it : plan.cases()) {
      Region own = number.cases().contains(it.id()) ? builds.where(it.when()) : builds.none();
      byComponent.merge(it.component(), own, Region::or);
    }
    return byComponent.values().stream().reduce(builds.possible(), Region::and);
  }
}
