package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;

/** The guide as a graph: each step once, edges between known steps, no way back. */
final class GuideShape {
  private final Map<String, Step> steps = new HashMap<>();
  private final Map<String, List<Edge>> leaving = new HashMap<>();
  private final List<Step> order = new ArrayList<>();

  /**
   * @throws UnprovableException when the guide is no directed acyclic graph of its steps
   */
  GuideShape(Guide guide) {
    for (Step step : guide.steps()) {
      if (steps.put(step.id(), step) != null) {
        throw new UnprovableException("the guide has two steps '" + step.id() + "'");
      }
    }
    for (Edge edge : guide.edges()) {
      require(edge.from(), "an edge leaves");
      require(edge.to(), "an edge leads to");
      leaving.computeIfAbsent(edge.from(), id -> new ArrayList<>()).add(edge);
    }
    require(guide.start(), "the guide starts at");
    guide.ends().forEach(id -> require(id, "the guide ends at"));
    visit(guide.start(), new HashSet<>(), new HashSet<>());
  }

  /** Steps that can be reached, each after all steps before it. */
  List<Step> order() {
    return order;
  }

  Step step(String id) {
    Step step = steps.get(id);
    if (step == null) {
      throw new UnprovableException("the guide has no step '" + id + "'");
    }
    return step;
  }

  List<Edge> leaving(Step step) {
    return leaving.getOrDefault(step.id(), List.of());
  }

  private void require(String id, String what) {
    if (!steps.containsKey(id)) {
      throw new UnprovableException(what + " step '" + id + "', which the guide does not have");
    }
  }

  private void visit(String id, Set<String> onTheWay, Set<String> done) {
    // Depth first with a stack of its own, for guides may be long.
    List<Step> path = new ArrayList<>();
    List<Integer> next = new ArrayList<>();
    path.add(step(id));
    next.add(0);
    onTheWay.add(id);
    while (!path.isEmpty()) {
      int top = path.size() - 1;
      Step step = path.get(top);
      List<Edge> edges = leaving(step);
      int at = next.get(top);
      if (at == edges.size()) {
        path.remove(top);
        next.remove(top);
        onTheWay.remove(step.id());
        done.add(step.id());
        order.add(0, step);
        continue;
      }
      next.set(top, at + 1);
      String to = edges.get(at).to();
      if (onTheWay.contains(to)) {
        throw new UnprovableException(
            "the guide goes in a circle: step '" + to + "' comes again after '" + step.id() + "'");
      }
      if (!done.contains(to)) {
        path.add(step(to));
        next.add(0);
        onTheWay.add(to);
      }
    }
  }
}
