package org.loomwright.model.design;

import java.util.List;
import java.util.Optional;

/**
 * The instructions as a directed acyclic graph of steps from one start to one or more ends.
 * Branches of different components lie one after the other, so the graph stays small.
 *
 * @param start id of the first step
 * @param steps steps in printed order
 * @param edges edges; those of one step are disjoint
 * @param ends ids of the last steps
 * @param tools tools of all steps, each once
 * @param expectedMinutes expected time over the mix of builds
 * @param expectedQuestions expected number of questions over the mix of builds
 */
public record Guide(
    String start,
    List<Step> steps,
    List<Edge> edges,
    List<String> ends,
    List<String> tools,
    double expectedMinutes,
    double expectedQuestions) {
  public Guide {
    steps = List.copyOf(steps);
    edges = List.copyOf(edges);
    ends = List.copyOf(ends);
    tools = List.copyOf(tools);
  }

  /** The step with this id. */
  public Optional<Step> step(String stepId) {
    return steps.stream().filter(step -> step.id().equals(stepId)).findFirst();
  }

  /** Edges that leave a step. */
  public List<Edge> from(String stepId) {
    return edges.stream().filter(edge -> edge.from().equals(stepId)).toList();
  }
}
