package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;

/**
 * Where a lead meets a need's pin: in the vehicle's connector where there is one, in a housing the
 * kit brings where there is none.
 *
 * @param touch end of the lead
 * @param demands what it needs of the vehicle
 * @param suffix addition to the way's id
 * @param forbidden why nothing may be landed there, empty when allowed
 */
record PinSide(Touch touch, List<Demand> demands, String suffix, String forbidden) {
  static List<PinSide> of(NeedAt need, Facts facts) {
    String mount = need.equipment().id() + "/" + need.plug().id();
    String cavity = need.pin().cavity();
    Touch own = new Touch.AtHousing(mount, need.plug().matesWith(), cavity, need.place());
    Connector connector = need.mount().connector().flatMap(facts.vehicle()::connector).orElse(null);
    if (connector == null) {
      return List.of(new PinSide(own, List.of(), "", ""));
    }
    Region all = facts.builds().possible();
    Region there = facts.present(connector);
    List<PinSide> sides = new ArrayList<>();
    String at = "cavity " + cavity + " of " + connector.name();
    List<Demand> demands =
        new ArrayList<>(
            List.of(
                new Demand(
                    all.minus(facts.wired(connector.id(), cavity).and(there)),
                    at + " already holds a wire"),
                new Demand(all.minus(facts.blocked(connector, cavity)), at + " is blocked")));
    if (!all.within(there)) {
      demands.add(new Demand(there, connector.name() + " is absent"));
      sides.add(
          new PinSide(
              own,
              List.of(new Demand(all.minus(there), connector.name() + " is there already")),
              ", new connector",
              ""));
    }
    String forbidden =
        connector.restraint()
            ? "restraint wiring is never touched"
            : connector.highVoltage() ? "high-voltage wiring is never touched" : "";
    sides.add(
        0,
        new PinSide(
            new Touch.AtCavity(connector.id(), cavity, connector.place()), demands, "", forbidden));
    return sides;
  }
}
