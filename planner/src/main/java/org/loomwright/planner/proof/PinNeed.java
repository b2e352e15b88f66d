package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
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
    return Nodes.PIN + id();
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

  /**
   * The ground pin its current returns through: the one its document names, else the ground of its
   * plug that returns most, else that of its equipment; empty for grounds and where there is none.
   */
  Optional<PinNeed> returnsBy(List<PinNeed> all) {
    if (need.kind() == NeedKind.GROUND) {
      return Optional.empty();
    }
    List<PinNeed> grounds =
        all.stream()
            .filter(it -> it.need().kind() == NeedKind.GROUND)
            .filter(it -> it.equipment().id().equals(equipment.id()))
            .sorted(
                Comparator.comparingDouble((PinNeed it) -> -it.continuousA())
                    .thenComparing(PinNeed::id))
            .toList();
    Optional<PinNeed> named =
        need.returnsBy()
            .flatMap(pin -> grounds.stream().filter(it -> it.name().equals(pin)).findFirst());
    return named
        .or(() -> grounds.stream().filter(it -> it.plug().id().equals(plug.id())).findFirst())
        .or(() -> grounds.stream().findFirst());
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
