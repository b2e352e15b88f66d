package org.loomwright.planner.need;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Connector;

/** The needs of a kit, in the order of its mounts and their pins. */
public final class Needs {
  private Needs() {}

  /**
   * All needs.
   *
   * @throws IllegalArgumentException when a mount names something that does not exist
   */
  public static List<NeedAt> of(KitOrder order) {
    List<NeedAt> needs = new ArrayList<>();
    for (Mount mount : order.kit().mounts()) {
      Equipment equipment =
          order.equipment().stream()
              .filter(it -> it.id().equals(mount.equipment()))
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException("no equipment " + mount.equipment()));
      Plug plug =
          order
              .plug(mount)
              .orElseThrow(() -> new IllegalArgumentException("no plug " + mount.plug()));
      String place = place(order, mount);
      for (Pin pin : plug.pins()) {
        pin.need()
            .ifPresent(
                need ->
                    needs.add(
                        new NeedAt(
                            equipment.id() + "/" + plug.id() + "/" + pin.cavity(),
                            equipment,
                            plug,
                            pin,
                            need,
                            mount,
                            place)));
      }
    }
    return needs;
  }

  /**
   * Where a plug meets the vehicle.
   *
   * @throws IllegalArgumentException when its connector does not exist
   */
  public static String place(KitOrder order, Mount mount) {
    return mount
        .place()
        .or(() -> mount.connector().flatMap(order.vehicle()::connector).map(Connector::place))
        .orElseThrow(() -> new IllegalArgumentException("no connector for " + mount.plug()));
  }

  /**
   * Needs that may share one feed, each set in order, sets of two or more only. Sharing goes both
   * ways: it is enough that one pin names the other.
   */
  public static List<List<NeedAt>> shared(List<NeedAt> needs) {
    Map<String, Set<String>> links = new LinkedHashMap<>();
    Map<String, NeedAt> byId = new LinkedHashMap<>();
    for (NeedAt need : needs) {
      byId.put(need.id(), need);
    }
    for (NeedAt need : needs) {
      for (String partner : need.need().shareWith()) {
        Optional<NeedAt> other = Optional.ofNullable(byId.get(partnerId(need, partner)));
        if (other.isPresent() && sameFeed(need, other.get())) {
          links.computeIfAbsent(need.id(), id -> new LinkedHashSet<>()).add(other.get().id());
          links.computeIfAbsent(other.get().id(), id -> new LinkedHashSet<>()).add(need.id());
        }
      }
    }
    List<List<NeedAt>> groups = new ArrayList<>();
    Set<String> done = new LinkedHashSet<>();
    for (NeedAt need : needs) {
      if (links.containsKey(need.id()) && done.add(need.id())) {
        Set<String> group = new LinkedHashSet<>(List.of(need.id()));
        List<String> open = new ArrayList<>(group);
        while (!open.isEmpty()) {
          for (String next : links.getOrDefault(open.remove(0), Set.of())) {
            if (group.add(next)) {
              open.add(next);
            }
          }
        }
        done.addAll(group);
        groups.add(needs.stream().filter(it -> group.contains(it.id())).toList());
      }
    }
    return groups;
  }

  /** Id of a partner written as "PLUG PIN". */
  public static String partnerId(NeedAt need, String partner) {
    return need.equipment().id() + "/" + partner.strip().replaceAll(" +", "/");
  }

  private static boolean sameFeed(NeedAt one, NeedAt other) {
    return one.need().kind() == other.need().kind()
        && one.need().feed().equals(other.need().feed())
        && !one.need().ownFuse()
        && !other.need().ownFuse();
  }
}
