package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;

/** The cautions of a kit: those its guide says, each once. */
public final class Cautions {
  private Cautions() {}

  /** Cautions in the order in which the guide says them first. */
  public static List<Caution> of(Guide guide) {
    record Words(String title, String text) {}
    Map<Words, List<Integer>> said = new LinkedHashMap<>();
    for (Step step : guide.steps()) {
      if (step.kind() == StepKind.CAUTION) {
        said.computeIfAbsent(new Words(step.title(), step.text()), it -> new ArrayList<>())
            .add(step.number());
      }
    }
    return said.entrySet().stream()
        .map(it -> new Caution(it.getKey().title(), it.getKey().text(), it.getValue()))
        .toList();
  }
}
