package org.loomwright.physics.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks for whole spools near the fractional {@link PatternMix}: fixes what is used a whole number
 * of times, then the most used pattern once, and solves for what is left; goes back to the next
 * patterns in line while the bound leaves hope.
 */
final class Dive {
  /** Most fractional optima, and most of them times the cells of their tables. */
  private static final int MOST_MIXES = 600;

  private static final long MOST_CELLS = 40_000_000;

  /** Patterns tried at each turn. */
  private static final int BREADTH = 3;

  private final Sizes sizes;
  private final Cuts way = new Cuts();
  private Cuts best;
  private final int goal;
  private final long most;
  private int mixes;

  private Dive(Sizes sizes, Cuts best, int goal) {
    this.sizes = sizes;
    this.best = best;
    this.goal = goal;
    this.most = Math.min(MOST_MIXES, 3 + MOST_CELLS / Knapsack.cells(sizes));
  }

  /**
   * The best cuts found.
   *
   * @param known cuts to beat
   * @param goal spools needed at least: reaching it ends the search
   */
  static Cuts from(Sizes sizes, PatternMix mix, Cuts known, int goal) {
    Dive dive = new Dive(sizes, known, goal);
    dive.down(sizes.demand(), mix);
    return dive.best;
  }

  private void down(int[] demand, PatternMix mix) {
    int start = way.count();
    int[] left = demand.clone();
    boolean whole = false;
    for (int k = 0; k < mix.patterns().size(); k++) {
      int times = (int) Math.floor(mix.times()[k] + 1e-6);
      whole |= cut(left, mix.patterns().get(k), times);
    }
    keepIfBetter(left);
    if (whole) {
      goOn(left);
      way.cutBackTo(start);
      return;
    }
    List<int[]> inLine =
        IntStream.range(0, mix.patterns().size())
            .boxed()
            .filter(k -> mix.times()[k] > 1e-6)
            .sorted(Comparator.comparingDouble(k -> -mix.times()[k]))
            .limit(BREADTH)
            .map(k -> mix.patterns().get(k))
            .toList();
    for (int[] pattern : inLine) {
      int[] then = demand.clone();
      if (isOver() || !cut(then, pattern, 1)) {
        return;
      }
      keepIfBetter(then);
      goOn(then);
      way.cutBackTo(start);
    }
  }

  private void goOn(int[] left) {
    if (isOver() || Knapsack.isEmpty(left) || way.count() + sizes.byLength(left) >= best.count()) {
      return;
    }
    mixes++;
    PatternMix mix = PatternMix.of(sizes, left);
    if (way.count() + mix.wholeBound() < best.count()) {
      down(left, mix);
    }
  }

  private boolean isOver() {
    return best.count() <= goal || mixes >= most;
  }

  /** Cuts a pattern as often as asked, but no piece more often than wanted. */
  private boolean cut(int[] left, int[] pattern, int times) {
    boolean any = false;
    for (int k = 0; k < times; k++) {
      int[] cut = new int[left.length];
      boolean some = false;
      for (int kind = 0; kind < left.length; kind++) {
        cut[kind] = Math.min(left[kind], pattern[kind]);
        left[kind] -= cut[kind];
        some |= cut[kind] > 0;
      }
      if (some) {
        way.add(cut, 1);
        any = true;
      }
    }
    return any;
  }

  private void keepIfBetter(int[] left) {
    Cuts rest = Cuts.firstFit(sizes, left);
    if (way.count() + rest.count() < best.count()) {
      best = way.copy();
      rest.spools().forEach(spool -> best.add(spool, 1));
    }
  }
}
