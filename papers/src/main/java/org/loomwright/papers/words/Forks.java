package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;

/**
 * Where the reader goes on after a step and where they came from, in words.
 *
 * @param guide the guide
 */
public record Forks(Guide guide) {

  /**
   * One way on from a fork.
   *
   * @param words which vehicles take it
   * @param to number of the step it leads to
   */
  public record Way(String words, int to) {}

  /** The ways on where they part; empty where there is one way or none. */
  public List<Way> ways(Step step) {
    Map<Integer, List<String>> conditions = new TreeMap<>();
    for (Edge edge : guide.from(step.id())) {
      conditions
          .computeIfAbsent(number(edge.to()), to -> new ArrayList<>())
          .add(edge.words().isEmpty() ? edge.when().text() : edge.words());
    }
    List<Way> ways = new ArrayList<>();
    if (conditions.size() > 1) {
      conditions.forEach((to, words) -> ways.add(new Way(String.join(", or ", words), to)));
    }
    return ways;
  }

  /** The step that every vehicle goes on with, where it is not the one with the next number. */
  public Optional<Integer> jump(Step step) {
    List<Integer> to =
        guide.from(step.id()).stream().map(it -> number(it.to())).distinct().toList();
    return to.size() == 1 && to.get(0) != step.number() + 1
        ? Optional.of(to.get(0))
        : Optional.empty();
  }

  /**
   * Where each answer of a question leads, by answer value. Empty when the answer alone does not
   * decide; then {@link #ways} and {@link #jump} say it.
   */
  public Map<String, Integer> byAnswer(Step step, Ask ask) {
    List<Edge> edges = guide.from(step.id());
    Map<String, Integer> targets = new LinkedHashMap<>();
    for (Answer answer : ask.answers()) {
      List<Integer> taken =
          edges.stream()
              .filter(edge -> Set.of(ask.trait()).containsAll(edge.when().traits()))
              .filter(edge -> edge.when().holds(Map.of(ask.trait(), answer.value())))
              .map(edge -> number(edge.to()))
              .distinct()
              .toList();
      boolean other =
          edges.stream().anyMatch(edge -> !Set.of(ask.trait()).containsAll(edge.when().traits()));
      if (taken.size() != 1 || other) {
        return Map.of();
      }
      targets.put(answer.value(), taken.get(0));
    }
    return targets;
  }

  /** Where a step is reached from when that is not only the step printed before it. */
  public Optional<String> reachedFrom(Step step) {
    List<Edge> into = guide.edges().stream().filter(it -> it.to().equals(step.id())).toList();
    List<Integer> numbers = into.stream().map(it -> number(it.from())).distinct().sorted().toList();
    if (numbers.isEmpty() || numbers.equals(List.of(step.number() - 1))) {
      return Optional.empty();
    }
    return Optional.of(
        "Reached from "
            + (numbers.size() == 1 ? "step " : "steps ")
            + list(numbers.stream().map(it -> Integer.toString(it)).toList())
            + ".");
  }

  /** True when the guide ends with this step. */
  public boolean isEnd(Step step) {
    return guide.from(step.id()).isEmpty();
  }

  private int number(String stepId) {
    return guide
        .step(stepId)
        .map(Step::number)
        .orElseThrow(() -> new IllegalArgumentException("the guide has no step '" + stepId + "'"));
  }

  private static String list(List<String> items) {
    List<String> all = new ArrayList<>(items);
    if (all.size() == 1) {
      return all.get(0);
    }
    String last = all.remove(all.size() - 1);
    return all.stream().collect(Collectors.joining(", ")) + " and " + last;
  }
}
