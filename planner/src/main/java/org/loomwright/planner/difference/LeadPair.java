package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;

/**
 * A lead in two plans.
 *
 * @param before as it was
 * @param after as it is
 */
record LeadPair(Lead before, Lead after) {
  /** Pairs the likest first; of equally like ones those first in the plans. */
  static List<LeadPair> match(List<Lead> before, List<Lead> after) {
    List<LeadPair> all = new ArrayList<>();
    for (Lead one : before) {
      for (Lead two : after) {
        if (one.needs().stream().anyMatch(two.needs()::contains)) {
          all.add(new LeadPair(one, two));
        }
      }
    }
    // The sort is stable, so the order of the plans decides between equals.
    all.sort(Comparator.comparingInt(LeadPair::likeness).reversed());
    Set<String> goneIds = new HashSet<>();
    Set<String> newIds = new HashSet<>();
    List<LeadPair> pairs = new ArrayList<>();
    for (LeadPair pair : all) {
      if (!goneIds.contains(pair.before.id()) && !newIds.contains(pair.after.id())) {
        goneIds.add(pair.before.id());
        newIds.add(pair.after.id());
        pairs.add(pair);
      }
    }
    pairs.sort(Comparator.comparingInt(it -> after.indexOf(it.after)));
    return pairs;
  }

  private int likeness() {
    int points = Set.copyOf(before.needs()).equals(Set.copyOf(after.needs())) ? 8 : 0;
    points += before.what().equals(after.what()) ? 2 : 0;
    points +=
        sameEnd(before.a(), after.a()) ? 4 : before.a().place().equals(after.a().place()) ? 1 : 0;
    points +=
        sameEnd(before.b(), after.b()) ? 4 : before.b().place().equals(after.b().place()) ? 1 : 0;
    points += before.runs().equals(after.runs()) ? 2 : 0;
    points += before.colour().equals(after.colour()) ? 1 : 0;
    points += before.id().equals(after.id()) ? 1 : 0;
    return points;
  }

  private static boolean sameEnd(LeadEnd one, LeadEnd two) {
    return PlanNames.spot(one.asMade()).equals(PlanNames.spot(two.asMade()));
  }
}
