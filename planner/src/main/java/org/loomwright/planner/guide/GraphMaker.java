package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.kit.CaseSet;

/**
 * Turns steps in printed order, each with the builds that take it, into a graph: from every step
 * the builds on it go on to the next step they take. The conditions of the edges are worded for
 * somebody who stands at the step and knows what was answered so far.
 */
final class GraphMaker {
  private final List<CaseSet> sets;
  private final CaseRegions regions;
  private final String casesNoted;

  /**
   * @param casesNoted id of the step after which the reader knows the cases by their letters
   */
  GraphMaker(List<CaseSet> sets, CaseRegions regions, String casesNoted) {
    this.sets = List.copyOf(sets);
    this.regions = regions;
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
                      : noted ? byCases(going, draft.on()).orElse(words.words()) : words.words()));
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
        minutes, questions);
  }

  // "in case A1 or A3", where the cases of one component tell the way, or "in case A1 and C1 or
  // C2",
  // where those of two do.
  private Optional<String> byCases(Region going, Region here) {
    for (CaseSet set : sets) {
      List<String> ids = meeting(set, going);
      if (regions.of(ids).and(here).equals(going)) {
        return Optional.of("in case " + String.join(" or ", ids));
      }
    }
    for (CaseSet one : sets) {
      for (CaseSet other : sets) {
        List<String> ids = meeting(one, going);
        List<String> more = meeting(other, going);
        if (one != other && regions.of(ids).and(regions.of(more)).and(here).equals(going)) {
          return Optional.of(
              "in case " + String.join(" or ", ids) + " and also " + String.join(" or ", more));
        }
      }
    }
    return Optional.empty();
  }

  private List<String> meeting(CaseSet set, Region going) {
    return set.ids().stream().filter(id -> regions.of(List.of(id)).meets(going)).toList();
  }
}
