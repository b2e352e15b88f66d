package org.loomwright.planner.choice;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Way;

/**
 * Spots that only one may have: a slot and the feed of a joint go to one lead, however many needs
 * that lead serves; a cavity goes to one need, because it meets one pin.
 */
final class Spots {
  private Spots() {}

  /**
   * The spots a way takes, with who holds them; studs, splices and branches of a joint are free.
   */
  static Map<String, String> taken(Way way) {
    Map<String, String> spots = new LinkedHashMap<>();
    for (LeadDraft lead : way.leads()) {
      for (Touch touch : new Touch[] {lead.a(), lead.b()}) {
        if (touch instanceof Touch.AtCavity || touch instanceof Touch.AtHousing) {
          spots.put(touch.key(), way.need().id());
        } else if (touch instanceof Touch.AtSlot) {
          spots.put(touch.key(), lead.key());
        }
      }
      // Two feeds into one joint would let one fuse feed past the other.
      if (lead.b() instanceof Touch.AtJoint joint) {
        spots.put("the feed of " + joint.key(), lead.key());
      }
    }
    return spots;
  }
}
