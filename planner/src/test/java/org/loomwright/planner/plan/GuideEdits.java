package org.loomwright.planner.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;

/** Changes a finished guide by hand. */
public final class GuideEdits {
  private GuideEdits() {}

  /** The guide without a step; what came before it leads to what comes after. */
  public static Guide without(Guide guide, String id) {
    List<Edge> outs = guide.from(id);
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : guide.edges()) {
      if (edge.to().equals(id)) {
        for (Edge out : outs) {
          edges.add(edge(edge.from(), out.to(), edge.when().and(out.when())));
        }
      } else if (!edge.from().equals(id)) {
        edges.add(edge);
      }
    }
    List<Step> steps = guide.steps().stream().filter(it -> !it.id().equals(id)).toList();
    String start = guide.start().equals(id) ? outs.get(0).to() : guide.start();
    return new Guide(
        start,
        steps,
        edges,
        guide.ends(),
        guide.tools(),
        guide.expectedMinutes(),
        guide.expectedQuestions());
  }

  /** The guide with steps moved, in their order, to just before another step, for every build. */
  public static Guide moved(Guide guide, List<String> ids, String before) {
    Guide rest = guide;
    List<Step> moved = new ArrayList<>();
    for (String id : ids) {
      moved.add(guide.step(id).orElseThrow());
      rest = without(rest, id);
    }
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : rest.edges()) {
      edges.add(edge.to().equals(before) ? edge(edge.from(), ids.get(0), edge.when()) : edge);
    }
    for (int i = 0; i < ids.size(); i++) {
      String next = i + 1 < ids.size() ? ids.get(i + 1) : before;
      edges.add(edge(ids.get(i), next, Condition.always()));
    }
    List<Step> steps = new ArrayList<>();
    for (Step step : rest.steps()) {
      if (step.id().equals(before)) {
        steps.addAll(moved);
      }
      steps.add(step);
    }
    return guide(guide, steps, edges);
  }

  /** The guide with another condition on one edge. */
  public static Guide withEdge(Guide guide, Edge old, Condition when) {
    return guide(
        guide,
        guide.steps(),
        guide.edges().stream()
            .map(it -> it.equals(old) ? edge(old.from(), old.to(), when) : it)
            .toList());
  }

  /** The guide with a step replaced by one of the same id. */
  public static Guide withStep(Guide guide, Step by) {
    return guide(
        guide,
        guide.steps().stream().map(it -> it.id().equals(by.id()) ? by : it).toList(),
        guide.edges());
  }

  private static Guide guide(Guide guide, List<Step> steps, List<Edge> edges) {
    return new Guide(
        guide.start(),
        steps,
        edges,
        guide.ends(),
        guide.tools(),
        guide.expectedMinutes(),
        guide.expectedQuestions());
  }

  private static Edge edge(String from, String to, Condition when) {
    return new Edge(from, to, when, when.text());
  }
}
