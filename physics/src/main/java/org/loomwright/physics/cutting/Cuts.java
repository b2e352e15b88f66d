package org.loomwright.physics.cutting;

import java.util.ArrayList;
import java.util.List;

/** Spools as they are being filled: for each, how many pieces of each length it gives. */
final class Cuts {
  private final List<int[]> spools = new ArrayList<>();

  int count() {
    return spools.size();
  }

  List<int[]> spools() {
    return spools;
  }

  Cuts copy() {
    Cuts copy = new Cuts();
    copy.spools.addAll(spools);
    return copy;
  }

  void add(int[] pattern, int times) {
    for (int k = 0; k < times; k++) {
      spools.add(pattern);
    }
  }

  /** Forgets all spools after the first {@code count}. */
  void cutBackTo(int count) {
    spools.subList(count, spools.size()).clear();
  }

  /** The longest piece first, each on the first spool with room (Johnson 1973). */
  static Cuts firstFit(Sizes sizes, int[] demand) {
    Cuts cuts = new Cuts();
    List<Integer> room = new ArrayList<>();
    for (int kind = 0; kind < sizes.kinds(); kind++) {
      int length = sizes.length()[kind];
      int left = demand[kind];
      for (int spool = 0; left > 0; spool++) {
        if (spool == room.size()) {
          room.add(sizes.stock());
          cuts.spools.add(new int[sizes.kinds()]);
        }
        int fit = Math.min(left, room.get(spool) / length);
        cuts.spools.get(spool)[kind] += fit;
        room.set(spool, room.get(spool) - fit * length);
        left -= fit;
      }
    }
    return cuts;
  }
}
