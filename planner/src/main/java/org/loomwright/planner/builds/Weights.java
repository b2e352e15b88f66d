package org.loomwright.planner.builds;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.loomwright.model.vehicle.Trait;

/**
 * Weighted count over a decision diagram: the sum over all builds of the product of the shares of
 * their values. Steps down by fixing the first variable of a diagram, which touches no other node;
 * the library's own way to hand out a diagram's nodes looks through the whole table of nodes.
 */
final class Weights {
  private final Map<Variable, double[]> weights = new HashMap<>();
  private final List<Variable> order;
  private final Map<Integer, Node> known = new HashMap<>();

  /** Level of a diagram's first variable, and the sum over that variable and those below it. */
  private record Node(int level, double sum) {}

  private Weights(Builds builds, List<Variable> order) {
    this.order = order;
    for (Trait trait : builds.traits().values()) {
      List<Variable> own = builds.variables(trait.id());
      int size = trait.values().size();
      double[] shares = new double[size];
      for (int i = 0; i < size; i++) {
        shares[i] = trait.values().get(i).share().map(share -> share.fraction()).orElse(1.0 / size);
      }
      if (own.size() == 1) {
        weights.put(own.get(0), new double[] {shares[1], shares[0]});
      } else {
        for (int i = 0; i < size; i++) {
          weights.put(own.get(i), new double[] {1, shares[i]});
        }
      }
    }
  }

  static double of(Builds builds, BDD bdd) {
    Weights weights = new Weights(builds, bdd.getVariableOrder());
    Node root = weights.node(bdd, 0);
    return weights.skipped(0, root.level()) * root.sum();
  }

  // A diagram whose variables all come at a level or below it.
  private Node node(BDD bdd, int from) {
    if (bdd.isContradiction() || bdd.isTautology()) {
      return new Node(order.size(), bdd.isTautology() ? 1 : 0);
    }
    Node before = known.get(bdd.index());
    if (before != null) {
      return before;
    }
    int here = from;
    BDD without = bdd.restrict(order.get(here).negate());
    while (without.index() == bdd.index()) {
      here++;
      without = bdd.restrict(order.get(here).negate());
    }
    Node low = node(without, here + 1);
    Node high = node(bdd.restrict(order.get(here)), here + 1);
    double[] weight = weight(order.get(here));
    double sum =
        weight[0] * skipped(here + 1, low.level()) * low.sum()
            + weight[1] * skipped(here + 1, high.level()) * high.sum();
    Node node = new Node(here, sum);
    known.put(bdd.index(), node);
    return node;
  }

  // Variables a diagram leaves out can have both values.
  private double skipped(int from, int to) {
    double product = 1;
    for (int i = from; i < to; i++) {
      double[] weight = weight(order.get(i));
      product *= weight[0] + weight[1];
    }
    return product;
  }

  private double[] weight(Variable variable) {
    return Optional.ofNullable(weights.get(variable)).orElseGet(() -> new double[] {1, 1});
  }
}
