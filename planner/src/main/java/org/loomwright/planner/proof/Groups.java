package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.loomwright.model.equipment.NeedKind;

/**
 * Puts each net together with those its loads return through and those that return through it. Nets
 * are split further only by the facts that decide these, so that no product over all nets is
 * needed.
 */
final class Groups {
  /** Most ways in which the facts around the nets of one group may fall out. */
  private static final int MOST = 20_000;

  private final List<NetAt> nets;
  private final Map<PinNeed, PinNeed> returns;
  private final Map<PinNeed, List<Integer>> netsOf = new LinkedHashMap<>();
  private final List<Group> groups = new ArrayList<>();
  private int start;

  private Groups(List<NetAt> nets, Map<PinNeed, PinNeed> returns) {
    this.nets = nets.stream().filter(Groups::carries).toList();
    this.returns = returns;
    for (int i = 0; i < this.nets.size(); i++) {
      for (Traced traced : this.nets.get(i).traced()) {
        netsOf.computeIfAbsent(traced.need(), need -> new ArrayList<>()).add(i);
      }
    }
  }

  /**
   * Groups with added leads.
   *
   * @param nets nets at one end of the guide
   * @param returns the ground of each supply that has one
   * @throws UnprovableException when too many facts are left open
   */
  static List<Group> of(List<NetAt> nets, Map<PinNeed, PinNeed> returns) {
    Groups all = new Groups(nets, returns);
    for (all.start = 0; all.start < all.nets.size(); all.start++) {
      Region builds = all.nets.get(all.start).builds();
      all.grow(builds, new TreeSet<>(Set.of(all.start)), Set.of());
    }
    return all.groups;
  }

  private static boolean carries(NetAt net) {
    return net.traced().stream().anyMatch(it -> it.source().kind() != Source.Kind.SIGNAL);
  }

  private void grow(Region builds, SortedSet<Integer> chosen, Set<PinNeed> unmet) {
    Optional<PinNeed> wanted = wanted(chosen, unmet);
    if (wanted.isEmpty()) {
      Group group = new Group(builds, chosen.stream().map(nets::get).toList());
      if (group.hasLeads()) {
        groups.add(group);
      }
      if (groups.size() > MOST) {
        throw new UnprovableException(
            "the facts around nets with common loads can fall out in more than " + MOST + " ways");
      }
      return;
    }
    Region left = builds;
    for (int index : netsOf.getOrDefault(wanted.get(), List.of())) {
      Region both = left.and(nets.get(index).builds());
      left = left.minus(both);
      // Groups with an earlier net were found from there.
      if (!both.isEmpty() && index > start) {
        SortedSet<Integer> more = new TreeSet<>(chosen);
        more.add(index);
        grow(both, more, unmet);
      }
    }
    if (!left.isEmpty()) {
      Set<PinNeed> more = new java.util.HashSet<>(unmet);
      more.add(wanted.get());
      grow(left, chosen, more);
    }
  }

  /** A need that belongs to these nets and is neither in them nor unmet. */
  private Optional<PinNeed> wanted(Set<Integer> chosen, Set<PinNeed> unmet) {
    List<PinNeed> inside =
        chosen.stream()
            .flatMap(index -> nets.get(index).traced().stream())
            .map(Traced::need)
            .toList();
    return inside.stream()
        .flatMap(need -> tied(need).stream())
        .filter(need -> !inside.contains(need) && !unmet.contains(need))
        .findFirst();
  }

  private List<PinNeed> tied(PinNeed need) {
    List<PinNeed> tied = new ArrayList<>();
    returns.forEach(
        (supply, ground) -> {
          if (supply.need().kind() == NeedKind.SUPPLY) {
            if (supply.equals(need)) {
              tied.add(ground);
            } else if (ground.equals(need)) {
              tied.add(supply);
            }
          }
        });
    return tied;
  }
}
