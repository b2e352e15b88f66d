package org.loomwright.planner.builds;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/** A set of possible builds of one {@link Builds}. Immutable; equal when the sets are equal. */
public final class Region {
  private final Builds builds;
  private final BDD bdd;

  Region(Builds builds, BDD bdd) {
    this.builds = builds;
    this.bdd = bdd;
    // Keeps the diagram's nodes when the kernel cleans up unreferenced ones.
    builds.kernel().addRef(bdd.index(), null);
  }

  /** Builds in both. */
  public Region and(Region other) {
    return new Region(builds, bdd.and(other.bdd));
  }

  /** Builds in either. */
  public Region or(Region other) {
    return new Region(builds, bdd.or(other.bdd));
  }

  /** Builds here that are not in the other. */
  public Region minus(Region other) {
    return new Region(builds, bdd.and(other.bdd.negate()));
  }

  /** True when no build is in it. */
  public boolean isEmpty() {
    return bdd.isContradiction();
  }

  /** True when every build here is also in the other. */
  public boolean within(Region other) {
    return minus(other).isEmpty();
  }

  /** True when some build is in both. */
  public boolean meets(Region other) {
    return !and(other).isEmpty();
  }

  /** Exact number of builds. */
  public BigInteger count() {
    return bdd.modelCount();
  }

  /**
   * The possible builds that agree with some build here on every trait but those given: what one
   * can't rule out without knowing those traits.
   */
  public Region blurred(Collection<String> hiddenTraits) {
    List<Variable> hidden = new ArrayList<>();
    for (String trait : hiddenTraits) {
      hidden.addAll(builds.variables(trait));
    }
    if (hidden.isEmpty()) {
      return this;
    }
    return new Region(builds, bdd.exists(hidden)).and(builds.possible());
  }

  /** The builds here whose group, when the given traits are hidden, lies wholly inside. */
  public Region certain(Collection<String> hiddenTraits) {
    return minus(builds.possible().minus(this).blurred(hiddenTraits));
  }

  /**
   * Traits the region depends on, given that only possible builds exist: those that can't be hidden
   * without letting other builds in.
   */
  public SortedSet<String> traits() {
    return new TreeSet<>(apartFrom(builds.possible().minus(this), List.of()));
  }

  /**
   * Few traits that tell the builds here from the others: no trait of the list can be left out.
   *
   * @param others builds to be told apart; must not meet this region
   * @param keep traits to prefer
   */
  public List<String> apartFrom(Region others, List<String> keep) {
    SortedSet<String> found = new TreeSet<>();
    for (BDD one : List.of(bdd, others.bdd)) {
      // The library's support() looks through the whole table of nodes, this only through its own.
      one.variableProfile()
          .forEach(
              (variable, nodes) -> {
                if (nodes > 0) {
                  builds.owner(variable).ifPresent(found::add);
                }
              });
    }
    // The rules of the vehicle bring their own traits in; drop what is not needed, wanted ones
    // last.
    List<String> order = new ArrayList<>(found);
    order.removeAll(keep);
    order.addAll(keep);
    for (String trait : order) {
      List<String> hidden = new ArrayList<>(builds.traits().keySet());
      SortedSet<String> rest = new TreeSet<>(found);
      rest.remove(trait);
      hidden.removeAll(rest);
      if (!blurred(hidden).meets(others)) {
        found.remove(trait);
      }
    }
    return builds.traits().keySet().stream().filter(found::contains).toList();
  }

  /** One build of the region, trait to value; traits in document order. */
  public Map<String, String> sample() {
    if (isEmpty()) {
      throw new IllegalStateException("an empty region has no sample");
    }
    // False where it can be, one variable after the other; the library's fullModel() does the same
    // but looks through the whole table of nodes.
    Set<Variable> positive = new HashSet<>();
    BDD rest = bdd;
    for (Variable variable : bdd.getVariableOrder()) {
      BDD without = rest.restrict(variable.negate());
      if (without.isContradiction()) {
        positive.add(variable);
        rest = rest.restrict(variable);
      } else {
        rest = without;
      }
    }
    Map<String, String> build = new LinkedHashMap<>();
    for (Trait trait : builds.traits().values()) {
      List<Variable> own = builds.variables(trait.id());
      if (own.size() == 1) {
        build.put(trait.id(), trait.values().get(positive.contains(own.get(0)) ? 0 : 1).id());
      } else {
        for (int i = 0; i < own.size(); i++) {
          if (positive.contains(own.get(i))) {
            build.put(trait.id(), trait.values().get(i).id());
          }
        }
      }
    }
    return build;
  }

  /**
   * Share of the possible builds, 0 to 1, when each trait's values come with their recorded shares
   * (equal shares where none are recorded) and traits are independent but for the vehicle's rules.
   */
  public double share() {
    Region all = builds.possible();
    double whole = Weights.of(builds, all.bdd);
    return whole == 0 ? 0 : Weights.of(builds, bdd) / whole;
  }

  /** The values that builds here have for a trait. */
  public List<String> values(String traitId) {
    List<String> values = new ArrayList<>();
    Trait trait = builds.traits().get(traitId);
    if (trait != null) {
      for (TraitValue value : trait.values()) {
        if (meets(builds.where(traitId, List.of(value.id())))) {
          values.add(value.id());
        }
      }
    }
    return values;
  }

  BDD bdd() {
    return bdd;
  }

  /** The builds this is a region of. */
  public Builds builds() {
    return builds;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Region region
        && region.builds == builds
        && region.bdd.index() == bdd.index();
  }

  @Override
  public int hashCode() {
    return bdd.index();
  }

  @Override
  public String toString() {
    return bdd.toFormula().toString();
  }
}
