package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.plan.With;

/** Writes a guide step after step, with branches that meet again; and changes finished ones. */
final class Script {
  private record Tail(String from, Condition when) {}

  private final List<Step> steps = new ArrayList<>();
  private final List<Edge> edges = new ArrayList<>();
  private List<Tail> tails = new ArrayList<>();

  Script then(Step step) {
    for (Tail tail : tails) {
      edges.add(new Edge(tail.from(), step.id(), tail.when(), tail.when().text()));
    }
    steps.add(numbered(step, steps.size() + 1));
    tails = new ArrayList<>(List.of(new Tail(step.id(), Condition.always())));
    return this;
  }

  /** Parts for builds on which a condition holds, one after the other; they meet afterwards. */
  Script branch(List<String> conditions, List<Consumer<Script>> parts) {
    if (tails.size() != 1) {
      throw new IllegalStateException("a branch needs one step before it");
    }
    String from = tails.get(0).from();
    List<Tail> after = new ArrayList<>();
    for (int i = 0; i < conditions.size(); i++) {
      tails = new ArrayList<>(List.of(new Tail(from, Condition.of(conditions.get(i)))));
      parts.get(i).accept(this);
      after.addAll(tails);
    }
    tails = after;
    return this;
  }

  Guide guide() {
    List<String> ends = tails.stream().map(Tail::from).toList();
    return new Guide(steps.get(0).id(), steps, edges, ends, List.of("hands"), 10, 0);
  }

  static Step caution(String id, String text) {
    return step(id, StepKind.CAUTION, text, Optional.empty(), Optional.empty(), Undo.EASILY);
  }

  static Step act(String id, Act act, Undo undo) {
    return step(id, StepKind.ACT, "do " + id, Optional.empty(), Optional.of(act), undo);
  }

  static Step act(String id, Act act) {
    return act(id, act, Undo.EASILY);
  }

  static Step ask(Trait trait) {
    return ask(trait, trait.tell().how());
  }

  static Step ask(Trait trait, TellHow how) {
    List<Answer> answers =
        trait.values().stream()
            .map(it -> new Answer(it.id(), it.words(), "so", Optional.empty()))
            .toList();
    return step(
        "ask/" + trait.id(),
        StepKind.ASK,
        "ask for " + trait.id(),
        Optional.of(new Ask(trait.id(), how, answers)),
        Optional.empty(),
        Undo.EASILY);
  }

  static Step measure(String id, List<Reading> readings) {
    Step it = step(id, StepKind.MEASURE, "read", Optional.empty(), Optional.empty(), Undo.EASILY);
    return withReadings(it, readings);
  }

  static Reading reading(String id, Optional<Band> band, String when) {
    return new Reading(
        id,
        id,
        band.isPresent() ? ReadingKind.NUMBER : ReadingKind.WORKS,
        band.map(Band::unit),
        band,
        Optional.empty(),
        Optional.empty(),
        Condition.of(when),
        when,
        "stop",
        "");
  }

  static Step withReadings(Step it, List<Reading> readings) {
    return With.changed(it, "readings", readings);
  }

  private static Step step(
      String id, StepKind kind, String text, Optional<Ask> ask, Optional<Act> act, Undo undo) {
    return new Step(
        id,
        0,
        kind,
        "floor",
        text,
        text,
        "",
        List.of(),
        Optional.empty(),
        ask,
        act,
        undo,
        List.of(),
        List.of("hands"),
        Optional.empty(),
        List.of(),
        1);
  }

  private static Step numbered(Step it, int number) {
    return With.changed(it, "number", number);
  }

  /** The guide without a step; what came before it leads to what comes after. */
  static Guide without(Guide guide, String id) {
    List<Edge> outs = guide.from(id);
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : guide.edges()) {
      if (edge.to().equals(id)) {
        for (Edge out : outs) {
          Condition when = edge.when().and(out.when());
          edges.add(new Edge(edge.from(), out.to(), when, when.text()));
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

  /** The guide with a step moved to just before another. */
  static Guide moved(Guide guide, String id, String before) {
    Step step = guide.step(id).orElseThrow();
    Guide rest = without(guide, id);
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : rest.edges()) {
      edges.add(
          edge.to().equals(before) ? new Edge(edge.from(), id, edge.when(), edge.words()) : edge);
    }
    edges.add(new Edge(id, before, Condition.always(), ""));
    List<Step> steps = new ArrayList<>(rest.steps());
    steps.add(step);
    return new Guide(rest.start(), steps, edges, rest.ends(), rest.tools(), 10, 0);
  }

  static Guide replaced(Guide guide, String id, Step by) {
    List<Step> steps =
        guide.steps().stream()
            .map(it -> it.id().equals(id) ? numbered(by, it.number()) : it)
            .toList();
    return new Guide(guide.start(), steps, guide.edges(), guide.ends(), guide.tools(), 10, 0);
  }

  static Guide withEdge(Guide guide, String from, String to, String when) {
    List<Edge> edges =
        guide.edges().stream()
            .map(
                it ->
                    it.from().equals(from) && it.to().equals(to)
                        ? new Edge(from, to, Condition.of(when), when)
                        : it)
            .toList();
    return new Guide(guide.start(), guide.steps(), edges, guide.ends(), guide.tools(), 10, 0);
  }
}
