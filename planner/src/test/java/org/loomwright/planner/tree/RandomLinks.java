package org.loomwright.planner.tree;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.planner.fixture.Draw;

/** Random links between nodes a0, a1, and so on. */
final class RandomLinks {
  private RandomLinks() {}

  /** A number of links of small whole costs, zero among them; parallel ones and loops occur. */
  static List<Link> any(Draw draw, int nodes, int links, int dearest) {
    List<Link> drawn = new ArrayList<>();
    for (int i = 0; i < links; i++) {
      String from = node(draw, nodes);
      String to = node(draw, nodes);
      drawn.add(new Link("l" + i, from, to, draw.number(draw.chance(10) ? 0 : 1, dearest)));
    }
    return drawn;
  }

  /** All nodes connected by a random tree, then further links. */
  static List<Link> connected(Draw draw, int nodes, int further, int dearest) {
    List<Link> drawn = new ArrayList<>(any(draw, nodes, further, dearest));
    for (int i = 1; i < nodes; i++) {
      drawn.add(new Link("t" + i, "a" + i, node(draw, i), draw.number(1, dearest)));
    }
    return drawn;
  }

  /** Some different nodes, at most as many as there are. */
  static Set<String> nodes(Draw draw, int nodes, int count) {
    Set<String> drawn = new LinkedHashSet<>();
    while (drawn.size() < Math.min(count, nodes)) {
      drawn.add(node(draw, nodes));
    }
    return drawn;
  }

  /** Pairs of different nodes. */
  static List<Ends> pairs(Draw draw, int nodes, int count) {
    List<Ends> pairs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> two = List.copyOf(nodes(draw, nodes, 2));
      pairs.add(new Ends(two.get(0), two.get(1)));
    }
    return pairs;
  }

  private static String node(Draw draw, int nodes) {
    return "a" + draw.number(0, nodes - 1);
  }
}
