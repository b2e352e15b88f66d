package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.equipment.NeedKind;

/** What the kit's other loads take from bus bars and bring to studs beside a group of nets. */
final class Elsewhere {
  private final Subject subject;
  private final List<NetAt> nets;
  private final Map<PinNeed, PinNeed> returns;

  /**
   * A load outside a group.
   *
   * @param need the load
   * @param feed slot it draws from; empty where that differs between the builds looked at
   * @param stud source node of the stud it returns to; empty where that is not certain
   */
  record Other(PinNeed need, Optional<FeedSpot> feed, Optional<String> stud) {}

  /**
   * @param nets all nets at an end of the guide
   * @param returns the ground of each supply that has one
   */
  Elsewhere(Subject subject, List<NetAt> nets, Map<PinNeed, PinNeed> returns) {
    this.subject = subject;
    this.nets = List.copyOf(nets);
    this.returns = returns;
  }

  /** Loads outside a group that draw from a fuse block on all builds of the group. */
  List<Other> of(Group group) {
    List<PinNeed> inside = group.traced().stream().map(Traced::need).toList();
    List<Other> others = new ArrayList<>();
    for (PinNeed need : supplies()) {
      if (inside.contains(need)) {
        continue;
      }
      List<Source> feeds = sources(need, group.builds());
      List<FeedSpot> spots =
          feeds.stream().flatMap(it -> FeedSpot.of(subject, it).stream()).toList();
      if (feeds.isEmpty() || spots.size() < feeds.size()) {
        continue;
      }
      boolean same =
          spots.stream().map(it -> it.block().id() + " " + it.slot().section()).distinct().count()
              == 1;
      others.add(
          new Other(need, same ? Optional.of(spots.get(0)) : Optional.empty(), stud(need, group)));
    }
    return others;
  }

  private Optional<String> stud(PinNeed need, Group group) {
    PinNeed ground = returns.get(need);
    if (ground == null) {
      return Optional.empty();
    }
    List<String> studs =
        sources(ground, group.builds()).stream()
            .map(Source::node)
            .filter(Nodes::endsNet)
            .distinct()
            .toList();
    return studs.size() == 1 ? Optional.of(studs.get(0)) : Optional.empty();
  }

  private List<PinNeed> supplies() {
    return nets.stream()
        .flatMap(net -> net.traced().stream())
        .map(Traced::need)
        .filter(need -> need.need().kind() == NeedKind.SUPPLY)
        .distinct()
        .toList();
  }

  /** Where a need leads on some of these builds; empty unless it leads somewhere on all of them. */
  private List<Source> sources(PinNeed need, Region builds) {
    List<Source> sources = new ArrayList<>();
    Region left = builds;
    for (NetAt net : nets) {
      if (!net.builds().meets(left)) {
        continue;
      }
      for (Traced traced : net.traced()) {
        if (traced.need().equals(need)) {
          sources.add(traced.source());
          left = left.minus(net.builds());
        }
      }
    }
    return left.isEmpty() ? sources : List.of();
  }
}
