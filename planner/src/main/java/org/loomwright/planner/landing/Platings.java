package org.loomwright.planner.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Connector;

/** What is on file of the plating of the half that a terminal will meet. */
public final class Platings {
  private Platings() {}

  /**
   * A plating on file.
   *
   * @param plating plating as written
   * @param where document and thing that say so
   */
  public record Mate(String plating, String where) {}

  /** The halves that meet a connector of the vehicle: its counterpart, and plugs mounted on it. */
  public static List<Mate> atConnector(KitOrder order, String connector) {
    List<Mate> mates = new ArrayList<>();
    order
        .vehicle()
        .connector(connector)
        .flatMap(Connector::matePlating)
        .ifPresent(it -> mates.add(new Mate(it, "vehicle, other half of " + connector)));
    for (Mount mount : order.kit().mounts()) {
      if (mount.connector().filter(connector::equals).isPresent()) {
        mates.addAll(atPlug(order, mount));
      }
    }
    return mates;
  }

  /**
   * The half that meets a housing of the kit.
   *
   * @param mount "EQUIPMENT/PLUG"
   */
  public static List<Mate> atHousing(KitOrder order, String mount) {
    return order.kit().mounts().stream()
        .filter(it -> mount.equals(it.equipment() + "/" + it.plug()))
        .findFirst()
        .map(it -> atPlug(order, it))
        .orElse(List.of());
  }

  private static List<Mate> atPlug(KitOrder order, Mount mount) {
    return order
        .plug(mount)
        .flatMap(Plug::plating)
        .map(it -> new Mate(it, "equipment, pins of " + mount.equipment() + "/" + mount.plug()))
        .stream()
        .toList();
  }

  /** Whether two platings as written mean the same. */
  public static boolean alike(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }
}
