package org.loomwright.model.kit;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Pictures;
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
 * @param pictures pictures that came with the documents
 */
public record KitOrder(
    Kit kit,
    Vehicle vehicle,
    List<Equipment> equipment,
    Parts parts,
    Rules rules,
    Pictures pictures) {
  public KitOrder {
    equipment = List.copyOf(equipment);
  }

  /** A kit whose documents came without pictures. */
  public KitOrder(Kit kit, Vehicle vehicle, List<Equipment> equipment, Parts parts, Rules rules) {
    this(kit, vehicle, equipment, parts, rules, Pictures.none());
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
