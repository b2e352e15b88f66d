package org.loomwright.planner.guide;

import java.util.List;
import java.util.Optional;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.kit.CaseSet;

/** Builds told by the letters of their cases, for readers who have written down their cases. */
final class CaseWords {
  private final List<CaseSet> sets;
  private final CaseRegions regions;

  CaseWords(List<CaseSet> sets, CaseRegions regions) {
    this.sets = List.copyOf(sets);
    this.regions = regions;
  }

  /**
   * "in case A1 or A3", where the cases of one component tell the builds, or "in case A1 and also
   * C1 or C2", where those of two do.
   *
   * @param told builds to tell
   * @param here builds the reader may have before them
   */
  Optional<String> of(Region told, Region here) {
    for (CaseSet set : sets) {
      List<String> ids = meeting(set, told);
      if (regions.of(ids).and(here).equals(told)) {
        return Optional.of("in case " + String.join(" or ", ids));
      }
    }
    for (CaseSet one : sets) {
      for (CaseSet other : sets) {
        List<String> ids = meeting(one, told);
        List<String> more = meeting(other, told);
        if (one != other && regions.of(ids).and(regions.of(more)).and(here).equals(told)) {
          return Optional.of(
              "in case " + String.join(" or ", ids) + " and also " + String.join(" or ", more));
        }
      }
    }
    return Optional.empty();
  }

  private List<String> meeting(CaseSet set, Region told) {
    return set.ids().stream().filter(id -> regions.of(List.of(id)).meets(told)).toList();
  }
}
