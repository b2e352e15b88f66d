package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;

/** What an act does to an end of a lead. */
final class Ends {
  private Ends() {}

  /**
   * An end put somewhere.
   *
   * @param lead lead
   * @param end "a" or "b"
   * @param landing where
   */
  record Put(String lead, String end, Landing landing) {
    String words() {
      return "end " + end + " of lead " + lead;
    }
  }

  /** The end an act lands, changes or parks; empty for other acts. */
  static Optional<Put> of(Act act) {
    if (act instanceof Act.Land it) {
      return Optional.of(new Put(it.lead(), it.end(), it.landing()));
    }
    if (act instanceof Act.Change it) {
      return Optional.of(new Put(it.lead(), it.end(), it.landing()));
    }
    if (act instanceof Act.Park it) {
      return Optional.of(new Put(it.lead(), it.end(), it.landing()));
    }
    return Optional.empty();
  }

  /** Whether the bench makes such an end, so that no step has to. */
  static boolean isBenchMade(Landing landing) {
    return landing instanceof Landing.InHousing || landing instanceof Landing.InJoint;
  }

  /** The spot that only one end may take; empty where several may meet. */
  static Optional<String> takes(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return Optional.of("cavity " + it.cavity() + " of '" + it.connector() + "'");
    }
    if (landing instanceof Landing.InSlot it) {
      return Optional.of("slot " + it.slot() + " of '" + it.block() + "'");
    }
    if (landing instanceof Landing.InHousing it) {
      return Optional.of("cavity " + it.cavity() + " of housing " + it.housing());
    }
    return Optional.empty();
  }
}
