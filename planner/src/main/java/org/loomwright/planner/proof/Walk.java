package org.loomwright.planner.proof;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;

/** Walks all possible builds through the guide at once, as sets that split and merge. */
final class Walk {
  /**
   * Where all builds went.
   *
   * @param reached builds at each end of the guide
   * @param lost builds for which no way led on, by the step they are left at
   * @param progress how each build stands where it came to
   */
  record Walked(Map<Step, Region> reached, Map<Step, Region> lost, Progress progress) {}

  private final Subject subject;
  private final List<StepCheck> checks;
  private final Findings findings;
  private final GuideShape shape;
  private final Progress progress;
  private final Knowledge knowledge;
  private final Map<String, Region> waiting = new HashMap<>();
  private final Map<Step, Region> reached = new LinkedHashMap<>();
  private final Map<Step, Region> lost = new LinkedHashMap<>();

  /**
   * @throws UnprovableException when the guide is no graph that can be walked
   */
  Walk(Subject subject, List<StepCheck> checks, Findings findings) {
    this.subject = subject;
    this.checks = List.copyOf(checks);
    this.findings = findings;
    this.shape = new GuideShape(subject.guide());
    this.progress = new Progress(subject.facts().regions());
    this.knowledge = new Knowledge(subject, progress);
  }

  Walked walk(Runnable look) {
    waiting.put(subject.guide().start(), subject.possible());
    for (Step step : shape.order()) {
      look.run();
      Region here = waiting.get(step.id());
      if (here != null && !here.isEmpty()) {
        checks.forEach(check -> check.at(step, here, progress, findings));
        take(step, here);
        leave(step, here);
      }
    }
    return new Walked(reached, lost, progress);
  }

  private void take(Step step, Region here) {
    step.ask().ifPresent(ask -> progress.ask(ask.trait(), ask.how().isReading(), here));
    Readings.take(subject, step, here, progress);
    if (step.kind() == StepKind.CAUTION) {
      progress.caution(step.id(), here);
    }
    Optional<Act> act = step.act();
    if (act.isPresent() && act.get() instanceof Act.Open open) {
      Reach.behind(subject, open.opening()).forEach(it -> progress.work(it, here));
    } else if (act.isEmpty() || !(act.get() instanceof Act.Close)) {
      Reach.openings(subject, step).forEach(it -> progress.work(it, here));
    }
    act.ifPresent(it -> progress.act(it, here));
  }

  private void leave(Step step, Region here) {
    List<Edge> edges = shape.leaving(step);
    if (subject.guide().ends().contains(step.id())) {
      reached.put(step, here);
      findings.require(
          edges.isEmpty(),
          here,
          Claim.COVER,
          Optional.of(step),
          "the guide ends here and yet leads on");
      return;
    }
    Region left = here;
    for (Edge edge : edges) {
      Region when = when(step, edge, here);
      findings.failOn(
          here.minus(left).and(when),
          Claim.COVER,
          Optional.of(step),
          "two ways lead on from here, one of them to step " + shape.step(edge.to()).number());
      if (edges.size() > 1 || !here.within(when)) {
        decided(step, edge, here, when);
      }
      // A build with two ways is followed on the first, so that its state stays one.
      waiting.merge(edge.to(), left.and(when), Region::or);
      left = left.minus(when);
    }
    if (!left.isEmpty()) {
      lost.put(step, left);
    }
  }

  private Region when(Step step, Edge edge, Region here) {
    try {
      return subject.facts().of(edge.when());
    } catch (UnknownNameException e) {
      findings.failOn(
          here,
          Claim.DECIDED,
          Optional.of(step),
          "the way to step "
              + shape.step(edge.to()).number()
              + " can't be read: "
              + e.getMessage());
      return subject.facts().regions().none();
    }
  }

  private void decided(Step step, Edge edge, Region here, Region when) {
    findings.require(true, here, Claim.DECIDED, Optional.of(step), "");
    for (Knowledge.Open open : knowledge.undecided(here, when)) {
      findings.failOn(
          open.builds(),
          Claim.DECIDED,
          Optional.of(step),
          "whether to go on to step "
              + shape.step(edge.to()).number()
              + " can't be known here: "
              + subject.names(open.traits())
              + " was not asked before");
    }
  }
}
