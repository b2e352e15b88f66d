package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;

/** One pin of a mounted plug that needs something. */
record PinNeed(Equipment equipment, Plug plug, Pin pin, Need need, Mount mount) {
  /** "EQUIPMENT/PLUG/PIN". */
  String id() {
    return equipment.id() + "/" + plug.id() + "/" + pin.cavity();
  }

  String node() {
    return "pin " + id();
  }

  /** As other needs of the same equipment name it. */
  String name() {
    return plug.id() + " " + pin.cavity();
  }

  String words() {
    return equipment.name() + ", " + pin.name() + " (pin " + pin.cavity() + ")";
  }

  double continuousA() {
    return need.continuous().amperes();
  }

  /** All needs of an order, in the order of its mounts. */
  static List<PinNeed> of(KitOrder order) {
    List<PinNeed> all = new ArrayList<>();
    for (Mount mount : order.kit().mounts()) {
      for (Equipment equipment : order.equipment()) {
        if (!equipment.id().equals(mount.equipment())) {
          continue;
        }
        for (Plug plug : equipment.plugs()) {
          if (plug.id().equals(mount.plug())) {
            for (Pin pin : plug.pins()) {
              pin.need().ifPresent(it -> all.add(new PinNeed(equipment, plug, pin, it, mount)));
            }
          }
        }
      }
    }
    return all;
  }
}
