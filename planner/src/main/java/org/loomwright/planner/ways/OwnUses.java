package org.loomwright.planner.ways;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.vehicle.GroundStud;

/**
 * What the leads of the user's own take of ground studs: all of them together on every build, which
 * is more than any build has where their conditions exclude one another.
 */
public final class OwnUses {
  private OwnUses() {}

  /** Name of a stud's current. */
  static String current(GroundStud stud) {
    return "stud " + stud.id() + " current";
  }

  /** Name of a stud's lug positions. */
  static String lugs(GroundStud stud) {
    return "stud " + stud.id() + " lugs";
  }

  /** Current that may be added to a stud, A. */
  static double currentRoomA(GroundStud stud) {
    return stud.limit().amperes() - stud.baseLoad().amperes();
  }

  /** Lugs that may be added to a stud. */
  static int lugRoom(GroundStud stud) {
    return stud.lugsMost() - stud.lugs();
  }

  /** Capacity taken by the leads of the user's own, by its name; the limit is the whole room. */
  public static Map<String, Use> of(KitOrder order) {
    Map<String, Use> uses = new LinkedHashMap<>();
    for (OwnLead lead : order.kit().ownLeads()) {
      for (OwnEnd end : List.of(lead.from(), lead.to())) {
        if (end instanceof OwnEnd.OfGround at) {
          order.vehicle().ground(at.ground()).ifPresent(stud -> add(uses, lead, stud));
        }
      }
    }
    return uses;
  }

  private static void add(Map<String, Use> uses, OwnLead lead, GroundStud stud) {
    merge(uses, new Use(current(stud), lead.current().amperes(), currentRoomA(stud), stud.name()));
    merge(uses, new Use(lugs(stud), 1, lugRoom(stud), "lug positions of " + stud.name()));
  }

  private static void merge(Map<String, Use> uses, Use use) {
    uses.merge(
        use.resource(),
        use,
        (one, two) ->
            new Use(one.resource(), one.amount() + two.amount(), one.limit(), one.words()));
  }
}
