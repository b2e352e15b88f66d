package org.loomwright.model.kit;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A kit with everything it refers to, ready to be planned.
 *
 * @param kit the order
 * @param vehicle its vehicle, unknown facts already turned into traits
 * @param equipment the equipment its mounts name
 * @param parts all its parts lists as one; on equal part numbers the first list counts
 * @param rules its rules
 */
public record KitOrder(
    Kit kit, Vehicle vehicle, List<Equipment> equipment, Parts parts, Rules rules) {
  public KitOrder {
    equipment = List.copyOf(equipment);
  }

  /** The plug a mount names. */
  public Optional<Plug> plug(Mount mount) {
    return equipment.stream()
        .filter(it -> it.id().equals(mount.equipment()))
        .flatMap(it -> it.plugs().stream())
        .filter(plug -> plug.id().equals(mount.plug()))
        .findFirst();
  }
}
