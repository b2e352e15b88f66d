package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/**
 * What is left of a {@link Region} once some traits are known: combinations of values of the other
 * traits. The known ones play no part any more, so that two answers that leave the same open give
 * equal rests. Immutable; equal when the sets are equal.
 */
public final class Rest {
  private final Builds builds;
  private final BDD bdd;

  private Rest(Builds builds, BDD bdd) {
    this.builds = builds;
    this.bdd = bdd;
    // Keeps the diagram's nodes when the kernel cleans up unreferenced ones.
    builds.kernel().addRef(bdd.index(), null);
  }

  /** A region of which nothing is known yet. */
  static Rest of(Region region) {
    return new Rest(region.builds(), region.bdd());
  }

  /** What is left when a trait has this value. */
  Rest given(Trait trait, TraitValue value) {
    List<Variable> own = builds.variables(trait.id());
    Literal chosen = builds.is(trait.id(), value.id());
    BDD left = bdd.restrict(chosen);
    if (own.size() > 1) {
      for (Variable other : own) {
        left = other.equals(chosen) ? left : left.restrict(other.negate());
      }
    }
    return new Rest(builds, left);
  }

  /** What one sees of it without looking at some traits. */
  public Rest without(Collection<String> hiddenTraits) {
    List<Variable> hidden = new ArrayList<>();
    hiddenTraits.forEach(trait -> hidden.addAll(builds.variables(trait)));
    return hidden.isEmpty() ? this : new Rest(builds, bdd.exists(hidden));
  }

  /** True when nothing is left. */
  public boolean isEmpty() {
    return bdd.isContradiction();
  }

  /** True when some combination is in both. */
  public boolean meets(Rest other) {
    return !bdd.and(other.bdd).isContradiction();
  }

  /**
   * How much of all vehicles it stands for, beside other rests of the same answers: the sum over
   * its combinations of the product of the shares of their values, up to a factor that is the same
   * for all rests of the same vehicle and the same known traits.
   */
  public double weight() {
    return Weights.of(builds, bdd);
  }

  /** Traits whose value makes a difference, in document order. */
  public Set<String> traits() {
    Set<String> found = new LinkedHashSet<>();
    bdd.variableProfile()
        .forEach(
            (variable, nodes) -> {
              if (nodes > 0) {
                builds.owner(variable).ifPresent(found::add);
              }
            });
    Set<String> ordered = new LinkedHashSet<>(builds.traits().keySet());
    ordered.retainAll(found);
    return ordered;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rest rest && rest.builds == builds && rest.bdd.index() == bdd.index();
  }

  @Override
  public int hashCode() {
    return bdd.index();
  }
}
