package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.logicng.knowledgecompilation.bdds.BDDFactory;
import org.logicng.knowledgecompilation.bdds.jbuddy.BDDKernel;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The possible builds of a vehicle. Conditions become binary decision diagrams over the traits: a
 * trait of two values is one variable, a trait of more values one variable per value of which
 * exactly one is true. Nothing here ever lists builds, so 2^20 builds cost no more than a thousand
 * as long as the conditions stay readable.
 *
 * <p>Not thread-safe; all regions of one instance belong together.
 */
public final class Builds {
  // Large enough that the diagrams of usual vehicles never trigger a clean-up.
  private static final int NODES = 200_000;
  private static final int CACHE = 20_000;

  private final FormulaFactory factory = new FormulaFactory();
  private final Map<String, Trait> traits = new LinkedHashMap<>();
  private final Map<String, List<Variable>> variables = new LinkedHashMap<>();
  private final Map<Variable, String> owner = new LinkedHashMap<>();
  private final BDDKernel kernel;
  private final Region possible;

  private Builds(Vehicle vehicle) {
    List<Variable> order = new ArrayList<>();
    int number = 0;
    for (Trait trait : vehicle.traits()) {
      traits.put(trait.id(), trait);
      int size = trait.values().size() == 2 ? 1 : trait.values().size();
      List<Variable> own = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        Variable variable = factory.variable("t" + number + "_" + i);
        own.add(variable);
        owner.put(variable, trait.id());
      }
      number++;
      variables.put(trait.id(), own);
      order.addAll(own);
    }
    if (order.isEmpty()) {
      // The kernel needs one variable; the formula below fixes it, so it never counts.
      order.add(factory.variable("none"));
    }
    kernel = new BDDKernel(factory, order, NODES, CACHE);
    BDD all = BDDFactory.build(factory.verum(), kernel);
    if (variables.isEmpty()) {
      all = BDDFactory.build(order.get(0), kernel);
    }
    for (List<Variable> own : variables.values()) {
      if (own.size() > 1) {
        all = all.and(BDDFactory.build(factory.exo(own), kernel));
      }
    }
    for (Exclusion rule : vehicle.rules()) {
      all = all.and(BDDFactory.build(formula(rule.exclude().expr()), kernel).negate());
    }
    possible = new Region(this, all);
  }

  /**
   * The possible builds of a vehicle whose unknown facts have become traits.
   *
   * @throws IllegalArgumentException when a condition names an unknown trait or value
   */
  public static Builds of(Vehicle vehicle) {
    return new Builds(vehicle);
  }

  /** All possible builds. */
  public Region possible() {
    return possible;
  }

  /** No build. */
  public Region none() {
    return new Region(this, BDDFactory.build(factory.falsum(), kernel));
  }

  /** The possible builds on which the condition holds. */
  public Region where(Condition condition) {
    return new Region(this, BDDFactory.build(formula(condition.expr()), kernel)).and(possible);
  }

  /** The possible builds on which the condition holds; all of them when there is none. */
  public Region where(Optional<Condition> condition) {
    return condition.map(this::where).orElse(possible);
  }

  /** The possible builds whose trait has one of the values. */
  public Region where(String trait, Collection<String> values) {
    List<Formula> any = new ArrayList<>();
    for (String value : values) {
      any.add(is(trait, value));
    }
    return new Region(this, BDDFactory.build(factory.or(any), kernel)).and(possible);
  }

  /** The traits by id, in document order, unknown facts last. */
  public Map<String, Trait> traits() {
    return java.util.Collections.unmodifiableMap(traits);
  }

  BDDKernel kernel() {
    return kernel;
  }

  List<Variable> variables(String trait) {
    return variables.getOrDefault(trait, List.of());
  }

  Optional<String> owner(Variable variable) {
    return Optional.ofNullable(owner.get(variable));
  }

  Literal is(String traitId, String valueId) {
    Trait trait = traits.get(traitId);
    if (trait == null) {
      throw new IllegalArgumentException("there is no trait '" + traitId + "'");
    }
    for (int i = 0; i < trait.values().size(); i++) {
      if (trait.values().get(i).id().equals(valueId)) {
        List<Variable> own = variables(traitId);
        return own.size() > 1 ? own.get(i) : i == 0 ? own.get(0) : own.get(0).negate();
      }
    }
    throw new IllegalArgumentException("trait '" + traitId + "' has no value '" + valueId + "'");
  }

  private Formula formula(Expr expr) {
    if (expr instanceof Expr.Always) {
      return factory.verum();
    } else if (expr instanceof Expr.Never) {
      return factory.falsum();
    } else if (expr instanceof Expr.Is is) {
      return is(is.trait(), is.value());
    } else if (expr instanceof Expr.In in) {
      return factory.or(in.values().stream().map(value -> is(in.trait(), value)).toList());
    } else if (expr instanceof Expr.Not not) {
      return factory.not(formula(not.parts().get(0)));
    } else if (expr instanceof Expr.And and) {
      return factory.and(and.parts().stream().map(this::formula).toList());
    } else if (expr instanceof Expr.Or or) {
      return factory.or(or.parts().stream().map(this::formula).toList());
    }
    throw new IllegalArgumentException(
        "an unknown fact must become a trait before builds are counted: " + expr.print());
  }
}
