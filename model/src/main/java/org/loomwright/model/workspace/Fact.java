package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A fact of a vehicle that may be unknown.
 *
 * @param owner record that states it
 * @param key key of its condition
 * @param trait the trait that stands for it when unknown
 * @param when builds on which it holds
 * @param tell how to tell
 */
record Fact(Object owner, String key, String trait, Condition when, Optional<Tell> tell) {

  /** All such facts of a vehicle, in the order of the document. */
  static List<Fact> of(Vehicle vehicle) {
    List<Fact> facts = new ArrayList<>();
    for (Connector it : vehicle.connectors()) {
      for (CavityFact cavity : it.cavities()) {
        String id = it.id() + "/" + cavity.cavity();
        cavity
            .pluggedWhen()
            .map(when -> new Fact(cavity, "pluggedWhen", id + "/plugged", when, cavity.tell()))
            .ifPresent(facts::add);
        cavity
            .blockedWhen()
            .map(when -> new Fact(cavity, "blockedWhen", id + "/blocked", when, cavity.tell()))
            .ifPresent(facts::add);
      }
    }
    for (FuseBlock it : vehicle.fuseBlocks()) {
      for (Section section : it.sections()) {
        String id = it.id() + "/" + section.id() + "/fed";
        facts.add(new Fact(section, "fedWhen", id, section.fedWhen(), section.tell()));
      }
      for (Slot slot : it.slots()) {
        String id = it.id() + "/" + slot.id() + "/metal";
        facts.add(new Fact(slot, "metalWhen", id, slot.metalWhen(), slot.tell()));
      }
    }
    for (Circuit it : vehicle.circuits()) {
      facts.add(new Fact(it, "presentWhen", it.id() + "/present", it.presentWhen(), it.tell()));
    }
    return facts;
  }
}
