package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;

/** The parts a guide falls into, in the order of the work. */
public enum Phase {
  READ("Read first"),
  READY("Get ready"),
  FIND_OUT("Find out what this vehicle has"),
  ISOLATE("Isolate the battery"),
  FIT("Fit the kit with the battery isolated"),
  CONNECT("Connect the battery and prove the work");

  private final String words;

  Phase(String words) {
    this.words = words;
  }

  /** The heading. */
  public String words() {
    return words;
  }

  /** The phase of each step, by step id, in printed order. */
  public static Map<String, Phase> of(Guide guide) {
    Map<String, Phase> phases = new LinkedHashMap<>();
    Set<String> leadingUp = leadingUpToIsolation(guide.steps());
    boolean isolated = false;
    boolean worked = false;
    List<Step> waiting = new ArrayList<>();
    for (Step step : guide.steps()) {
      if (step.kind() == StepKind.CAUTION) {
        waiting.add(step);
        continue;
      }
      boolean first = phases.isEmpty();
      Phase phase;
      if (step.act().filter(it -> it instanceof Act.Isolate).isPresent()) {
        isolated = true;
        phase = ISOLATE;
      } else if (step.act().filter(it -> it instanceof Act.Reconnect).isPresent()) {
        isolated = false;
        worked = true;
        phase = CONNECT;
      } else if (leadingUp.contains(step.id())) {
        phase = ISOLATE;
      } else if (isolated) {
        phase = FIT;
      } else if (worked) {
        phase = CONNECT;
      } else {
        phase = step.kind() == StepKind.PREPARE ? READY : FIND_OUT;
      }
      // A caution belongs to what it warns of; those before everything are read first.
      Phase warned = first && !leadingUp.contains(step.id()) ? READ : phase;
      waiting.forEach(it -> phases.put(it.id(), warned));
      waiting.clear();
      phases.put(step.id(), phase);
    }
    waiting.forEach(it -> phases.put(it.id(), READ));
    return phases;
  }

  /** Cautions and openings right before the battery is isolated; they belong to it. */
  private static Set<String> leadingUpToIsolation(List<Step> steps) {
    Set<String> ids = new LinkedHashSet<>();
    for (Step step : steps) {
      if (step.act().filter(it -> it instanceof Act.Isolate).isPresent()) {
        return ids;
      }
      if (step.kind() == StepKind.CAUTION
          || step.act().filter(it -> it instanceof Act.Open).isPresent()) {
        ids.add(step.id());
      } else {
        ids.clear();
      }
    }
    return Set.of();
  }
}
