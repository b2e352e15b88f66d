package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;

/**
 * Turns steps in printed order, each with the builds that take it, into a graph: from every step
 * the builds on it go on to the next step they take. The conditions of the edges are worded for
 * somebody who stands at the step and knows what was answered so far.
 */
final class GraphMaker {
  private final CaseWords cases;
  private final String casesNoted;

  /**
   * @param casesNoted id of the step after which the reader knows the cases by their letters
   */
  GraphMaker(CaseWords cases, String casesNoted) {
    this.cases = cases;
    this.casesNoted = casesNoted;
  }

  Guide make(List<Draft> drafts) {
    List<Draft> taken = drafts.stream().filter(draft -> !draft.on().isEmpty()).toList();
    List<Step> steps = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    Set<String> tools = new LinkedHashSet<>();
    List<String> asked = new ArrayList<>();
    double minutes = 0;
    double questions = 0;
    boolean noted = false;
    for (int i = 0; i < taken.size(); i++) {
      Draft draft = taken.get(i);
      steps.add(draft.step(i + 1));
      tools.addAll(draft.tools());
      minutes += draft.minutes() * draft.on().share();
      questions += draft.ask().isPresent() ? draft.on().share() : 0;
      // The latest question is the one the reader has in mind.
      draft.ask().ifPresent(ask -> asked.add(ask.trait()));
      noted |= draft.id().equals(casesNoted);
      Region open = draft.on();
      for (int j = i + 1; j < taken.size() && !open.isEmpty(); j++) {
        Region going = open.and(taken.get(j).on());
        if (!going.isEmpty()) {
          Described words = Described.of(going, draft.on(), asked);
          edges.add(
              new Edge(
                  draft.id(),
                  taken.get(j).id(),
                  words.when(),
                  going.equals(draft.on())
                      ? ""
                      : noted ? cases.of(going, draft.on()).orElse(words.words()) : words.words()));
          open = open.minus(going);
        }
      }
    }
    ends.add(taken.get(taken.size() - 1).id());
    return new Guide(
        taken.get(0).id(),
        steps,
        edges,
        ends,
        tools.stream().sorted(Comparator.naturalOrder()).toList(),
        minutes,
        questions);
  }
}
