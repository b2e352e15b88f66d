package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Step;

/** Collects what the checks find while the guide is walked; the only thing here that changes. */
final class Findings {
  private record Key(Claim claim, String step, String what) {}

  private record Figure(double share, String words) {}

  private final Region possible;
  private final Map<Key, Fault> faults = new LinkedHashMap<>();
  private final Map<Claim, Integer> checked = new EnumMap<>(Claim.class);
  private final Map<Claim, Figure> worst = new EnumMap<>(Claim.class);

  Findings(Region possible) {
    this.possible = possible;
  }

  /** Counts a check of these builds and keeps a fault when some of them are possible. */
  void failOn(Region builds, Claim claim, Optional<Step> step, String what) {
    count(claim);
    Region wrong = builds.and(possible);
    if (wrong.isEmpty()) {
      return;
    }
    faults.merge(
        new Key(claim, step.map(Step::id).orElse(""), what),
        new Fault(claim, wrong, step, what),
        (old, more) -> new Fault(claim, old.builds().or(more.builds()), step, what));
  }

  /** A check that either holds on all these builds or on none. */
  void require(boolean holds, Region builds, Claim claim, Optional<Step> step, String what) {
    if (holds) {
      count(claim);
    } else {
      failOn(builds, claim, step, what);
    }
  }

  /**
   * Keeps the figure nearest to its limit.
   *
   * @param share figure over limit
   */
  void figure(Claim claim, double share, String words) {
    Figure figure = new Figure(share, words);
    worst.merge(claim, figure, (old, more) -> more.share() > old.share() ? more : old);
  }

  List<Fault> of(Claim claim) {
    return all().stream().filter(fault -> fault.claim() == claim).toList();
  }

  Collection<Fault> all() {
    return new ArrayList<>(faults.values());
  }

  int checked(Claim claim) {
    return checked.getOrDefault(claim, 0);
  }

  Optional<String> worst(Claim claim) {
    return Optional.ofNullable(worst.get(claim)).map(Figure::words);
  }

  private void count(Claim claim) {
    checked.merge(claim, 1, Integer::sum);
  }
}
