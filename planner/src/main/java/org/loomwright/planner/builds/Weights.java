package org.loomwright.planner.builds;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.logicng.formulas.FType;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.logicng.knowledgecompilation.bdds.datastructures.BDDConstant;
import org.logicng.knowledgecompilation.bdds.datastructures.BDDInnerNode;
import org.logicng.knowledgecompilation.bdds.datastructures.BDDNode;
import org.loomwright.model.vehicle.Trait;

/**
 * Weighted count over a decision diagram: the sum over all builds of the product of the shares of
 * their values.
 */
final class Weights {
  private final Map<Variable, double[]> weights = new HashMap<>();
  private final List<Variable> order;
  private final Map<Variable, Integer> level = new HashMap<>();
  // By identity: a node's own hash walks the whole diagram below it, once per path.
  private final Map<BDDNode, Double> known = new IdentityHashMap<>();

  private Weights(Builds builds, List<Variable> order) {
    this.order = order;
    for (int i = 0; i < order.size(); i++) {
      level.put(order.get(i), i);
    }
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
    BDDNode root = bdd.toLngBdd();
    return weights.skipped(0, weights.level(root)) * weights.of(root);
  }

  private double of(BDDNode node) {
    if (node instanceof BDDConstant constant) {
      return constant.label().type() == FType.FALSE ? 0 : 1;
    }
    Double before = known.get(node);
    if (before != null) {
      return before;
    }
    BDDInnerNode inner = (BDDInnerNode) node;
    int here = level(inner);
    double[] weight = weight(order.get(here));
    double sum =
        weight[0] * skipped(here + 1, level(inner.low())) * of(inner.low())
            + weight[1] * skipped(here + 1, level(inner.high())) * of(inner.high());
    known.put(node, sum);
    return sum;
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

  private int level(BDDNode node) {
    return node instanceof BDDInnerNode inner
        ? Optional.ofNullable(level.get((Variable) inner.label())).orElse(order.size())
        : order.size();
  }
}
