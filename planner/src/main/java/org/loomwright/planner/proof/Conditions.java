package org.loomwright.planner.proof;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;

/** Turns conditions into sets of builds. */
final class Conditions {
  private final Regions regions;
  private final Map<Condition, Region> known = new HashMap<>();

  Conditions(Regions regions) {
    this.regions = regions;
  }

  /** Conditions of a vehicle, with an order of traits that keeps those named together close. */
  static Conditions over(Vehicle vehicle) {
    Set<String> order = new LinkedHashSet<>();
    vehicle.rules().forEach(rule -> order.addAll(rule.exclude().traits()));
    for (FuseBlock block : vehicle.fuseBlocks()) {
      block.sections().forEach(section -> order.addAll(section.fedWhen().traits()));
      block.slots().forEach(slot -> order.addAll(slot.metalWhen().traits()));
    }
    for (Circuit circuit : vehicle.circuits()) {
      order.addAll(circuit.presentWhen().traits());
    }
    vehicle.traits().forEach(trait -> order.add(trait.id()));
    List<Trait> traits =
        order.stream()
            .flatMap(id -> vehicle.traits().stream().filter(trait -> trait.id().equals(id)))
            .toList();
    return new Conditions(new Regions(traits));
  }

  Regions regions() {
    return regions;
  }

  /** Builds that the vehicle's rules allow. */
  Region possible(Vehicle vehicle) {
    Region possible = regions.all();
    for (Exclusion rule : vehicle.rules()) {
      possible = possible.minus(of(rule.exclude()));
    }
    return possible;
  }

  /**
   * Builds on which a condition holds.
   *
   * @throws UnknownNameException when it speaks of a trait or value the vehicle does not have
   * @throws IllegalArgumentException when it is unknown; such facts have to become traits first
   */
  Region of(Condition condition) {
    Region region = known.get(condition);
    if (region == null) {
      region = of(condition.expr());
      known.put(condition, region);
    }
    return region;
  }

  private Region of(Expr expr) {
    if (expr instanceof Expr.Always) {
      return regions.all();
    }
    if (expr instanceof Expr.Never) {
      return regions.none();
    }
    if (expr instanceof Expr.Is is) {
      return regions.is(is.trait(), is.value());
    }
    if (expr instanceof Expr.In in) {
      Region any = regions.none();
      for (String value : in.values()) {
        any = any.or(regions.is(in.trait(), value));
      }
      return any;
    }
    if (expr instanceof Expr.Not not) {
      return of(not.part()).not();
    }
    if (expr instanceof Expr.And and) {
      return and.parts().stream().map(this::of).reduce(regions.all(), Region::and);
    }
    if (expr instanceof Expr.Or or) {
      return or.parts().stream().map(this::of).reduce(regions.none(), Region::or);
    }
    throw new IllegalArgumentException(
        "a fact that is unknown has to become a trait before anything can be proven of it");
  }
}
