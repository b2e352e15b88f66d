package org.loomwright.physics.cutting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Tries every way, spool by spool: each spool takes the longest piece still wanted and is filled so
 * that no wanted piece fits any more; nothing is lost by that, because a piece moved forward never
 * hurts. Demands met before with no more spools, and those whose length alone asks for too many,
 * are not followed.
 */
final class Completion {
  private static final int MOST_SPOOLS_TRIED = 1_000_000;
  private static final int MOST_REMEMBERED = 200_000;

  private final Sizes sizes;
  private final Cuts way = new Cuts();
  private final Map<Demand, Integer> seen = new HashMap<>();
  private Cuts best;
  private final int goal;
  private int tried;

  private Completion(Sizes sizes, Cuts best, int goal) {
    this.sizes = sizes;
    this.best = best;
    this.goal = goal;
  }

  /**
   * What came of it.
   *
   * @param cuts the best cuts known
   * @param complete whether every way was tried, so that nothing better exists
   */
  record Outcome(Cuts cuts, boolean complete) {}

  /** A demand as a key. */
  private record Demand(int hash, String counts) {
    static Demand of(int[] left) {
      return new Demand(Arrays.hashCode(left), Arrays.toString(left));
    }
  }

  static Outcome of(Sizes sizes, Cuts known, int goal) {
    Completion completion = new Completion(sizes, known, goal);
    completion.next(sizes.demand().clone());
    return new Outcome(completion.best, completion.tried < MOST_SPOOLS_TRIED);
  }

  private boolean isOver() {
    return tried >= MOST_SPOOLS_TRIED || best.count() <= goal;
  }

  private void next(int[] left) {
    if (isOver() || way.count() + sizes.byLength(left) >= best.count()) {
      return;
    }
    int longest = 0;
    while (longest < left.length && left[longest] == 0) {
      longest++;
    }
    if (longest == left.length) {
      best = way.copy();
      return;
    }
    Demand demand = Demand.of(left);
    if (seen.getOrDefault(demand, Integer.MAX_VALUE) <= way.count()) {
      return;
    }
    if (seen.size() < MOST_REMEMBERED) {
      seen.put(demand, way.count());
    }
    int[] spool = new int[left.length];
    spool[longest]++;
    left[longest]--;
    fill(left, spool, longest, sizes.stock() - sizes.length()[longest]);
    left[longest]++;
  }

  /** Adds pieces from {@code kind} on, as many as fit first. */
  private void fill(int[] left, int[] spool, int kind, int room) {
    if (isOver()) {
      return;
    }
    if (kind == left.length) {
      tried++;
      if (isFull(left, room)) {
        int before = way.count();
        way.add(spool.clone(), 1);
        next(left);
        way.cutBackTo(before);
      }
      return;
    }
    int length = sizes.length()[kind];
    int most = Math.min(left[kind], room / length);
    for (int count = most; count >= 0; count--) {
      spool[kind] += count;
      left[kind] -= count;
      fill(left, spool, kind + 1, room - count * length);
      spool[kind] -= count;
      left[kind] += count;
    }
  }

  private boolean isFull(int[] left, int room) {
    for (int kind = 0; kind < left.length; kind++) {
      if (left[kind] > 0 && sizes.length()[kind] <= room) {
        return false;
      }
    }
    return true;
  }
}
