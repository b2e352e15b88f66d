package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Facts of a vehicle as the builds on which they are so. */
final class Facts {
  private final Vehicle vehicle;
  private final Conditions conditions;
  private final Region possible;

  Facts(Vehicle vehicle) {
    this.vehicle = vehicle;
    this.conditions = Conditions.over(vehicle);
    this.possible = conditions.possible(vehicle);
  }

  Regions regions() {
    return conditions.regions();
  }

  Region possible() {
    return possible;
  }

  /** See {@link Conditions#of}. */
  Region of(Condition condition) {
    return conditions.of(condition);
  }

  Region present(Connector connector) {
    return connector.presentWhen().map(conditions::of).orElse(regions().all());
  }

  Region present(Circuit circuit) {
    return conditions.of(circuit.presentWhen());
  }

  Region plugged(Connector connector, String cavity) {
    return connector
        .cavity(cavity)
        .flatMap(CavityFact::pluggedWhen)
        .map(conditions::of)
        .orElse(regions().none());
  }

  Region blocked(Connector connector, String cavity) {
    return connector
        .cavity(cavity)
        .flatMap(CavityFact::blockedWhen)
        .map(conditions::of)
        .orElse(regions().none());
  }

  /** Builds on which a slot's section is fed; none when the block has no such section. */
  Region fed(FuseBlock block, Slot slot) {
    return block
        .section(slot.section())
        .map(Section::fedWhen)
        .map(conditions::of)
        .orElse(regions().none());
  }

  Region metal(Slot slot) {
    return conditions.of(slot.metalWhen());
  }

  /** Circuits that end at a spot on some build. */
  List<Circuit> endingAt(Spot spot) {
    List<Circuit> found = new ArrayList<>();
    for (Circuit circuit : vehicle.circuits()) {
      if (circuit.from().equals(spot) || circuit.to().contains(spot)) {
        found.add(circuit);
      }
    }
    return found;
  }
}
