package org.loomwright.planner.proof;

import java.util.List;
import java.util.Optional;

/**
 * Nets that the current of the same loads runs through, feeds and grounds together, on builds that
 * have each of them alike.
 *
 * @param builds the builds; not empty
 * @param nets the nets, at least one
 */
record Group(Region builds, List<NetAt> nets) {
  Group {
    nets = List.copyOf(nets);
  }

  List<Traced> traced() {
    return nets.stream().flatMap(net -> net.traced().stream()).toList();
  }

  /** The way of a need here; empty when it has none, or none in these nets. */
  Optional<Traced> traced(PinNeed need) {
    return traced().stream().filter(it -> it.need().equals(need)).findFirst();
  }

  boolean hasLeads() {
    return nets.stream().anyMatch(net -> net.net().hasLeads());
  }
}
