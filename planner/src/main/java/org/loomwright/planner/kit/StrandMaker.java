package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Way;

/** Unites the leads of all cases of a component. */
final class StrandMaker {
  private StrandMaker() {}

  /** The strands of all components, each on its own shortest path. */
  static List<Strand> of(List<CaseSet> sets, Routes routes) {
    return sets.stream().flatMap(set -> of(set, routes).stream()).toList();
  }

  private static List<Strand> of(CaseSet set, Routes routes) {
    Map<String, LeadDraft> drafts = new LinkedHashMap<>();
    Map<String, Map<String, Set<NeedAt>>> uses = new LinkedHashMap<>();
    for (CaseSet.Member member : set.members()) {
      for (Map.Entry<NeedAt, Way> one : member.ways().entrySet()) {
        for (LeadDraft draft : one.getValue().leads()) {
          drafts.putIfAbsent(draft.key(), draft);
          uses.computeIfAbsent(draft.key(), k -> new LinkedHashMap<>())
              .computeIfAbsent(member.id(), id -> new LinkedHashSet<>())
              .add(one.getKey());
        }
      }
    }
    List<Strand> strands = new ArrayList<>();
    drafts.forEach(
        (key, draft) -> {
          Map<String, Set<NeedAt>> byCase = uses.getOrDefault(key, Map.of());
          Optional<Strand> shared =
              strands.stream().filter(it -> it.canServe(draft, byCase)).findFirst();
          Strand strand =
              shared.orElseGet(
                  () -> {
                    Strand fresh =
                        new Strand(
                            set.letter(),
                            draft,
                            routes
                                .between(draft.a().place(), draft.b().place())
                                .orElseThrow(
                                    () -> new IllegalStateException("no path for " + key)));
                    strands.add(fresh);
                    return fresh;
                  });
          byCase.forEach((caseId, needs) -> strand.use(caseId, draft, needs));
        });
    return strands;
  }
}
