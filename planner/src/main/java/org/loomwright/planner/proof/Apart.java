package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.loomwright.model.design.Step;

/** Needs that must be kept apart share no lead, joint or factory circuit on the way. */
final class Apart {
  private record Way(Traced traced, Region builds) {}

  private final List<PinNeed> needs;
  private final List<Way> ways = new ArrayList<>();

  Apart(List<PinNeed> needs) {
    this.needs =
        needs.stream()
            .filter(one -> needs.stream().anyMatch(other -> apart(one, other) || apart(other, one)))
            .toList();
  }

  void add(NetAt at) {
    for (Traced traced : at.traced()) {
      if (needs.contains(traced.need())) {
        ways.add(new Way(traced, at.builds()));
      }
    }
  }

  void check(Step step, Findings findings) {
    for (Way one : ways) {
      for (Way other : ways) {
        if (!apart(one.traced().need(), other.traced().need())) {
          continue;
        }
        TreeSet<String> shared = new TreeSet<>(one.traced().shares());
        shared.retainAll(other.traced().shares());
        Region both = one.builds().and(other.builds());
        findings.failOn(
            shared.isEmpty() ? both.in().none() : both,
            Claim.NEEDS_MET,
            Optional.of(step),
            one.traced().need().words()
                + " must be kept apart from "
                + other.traced().need().words()
                + " and shares "
                + String.join(", ", shared)
                + " with it");
      }
    }
  }

  private static boolean apart(PinNeed one, PinNeed other) {
    return one.equipment().id().equals(other.equipment().id())
        && one.need().apartFrom().contains(other.name());
  }
}
