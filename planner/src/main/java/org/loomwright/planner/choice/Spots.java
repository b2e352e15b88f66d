package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.ways.LeadDraft;

/** Spots that only one lead may have. */
final class Spots {
  private Spots() {}

  /** Keys of the cavities and slots a lead takes; studs, splices and joints hold several leads. */
  static List<String> exclusive(LeadDraft lead) {
    List<String> spots = new ArrayList<>();
    for (Touch touch : new Touch[] {lead.a(), lead.b()}) {
      if (touch instanceof Touch.AtCavity
          || touch instanceof Touch.AtHousing
          || touch instanceof Touch.AtSlot) {
        spots.add(touch.key());
      }
    }
    return spots;
  }
}
