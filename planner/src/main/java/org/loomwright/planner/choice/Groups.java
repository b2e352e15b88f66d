package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/** Splits the possible builds of a component by the conditions of its ways. */
final class Groups {
  private Groups() {}

  /** Non-empty groups; together all possible builds. */
  static List<Group> of(List<NeedAt> needs, Map<NeedAt, List<Way>> ways, Region possible) {
    Set<Region> conditions = new LinkedHashSet<>();
    for (NeedAt need : needs) {
      for (Way way : ways.getOrDefault(need, List.of())) {
        if (way.isOpen()) {
          conditions.add(way.when());
        }
      }
    }
    List<Region> cells = List.of(possible);
    for (Region condition : conditions) {
      List<Region> next = new ArrayList<>();
      for (Region cell : cells) {
        Region in = cell.and(condition);
        Region out = cell.minus(condition);
        if (!in.isEmpty()) {
          next.add(in);
        }
        if (!out.isEmpty()) {
          next.add(out);
        }
      }
      cells = next;
    }
    List<Group> groups = new ArrayList<>();
    for (Region cell : cells) {
      if (!cell.isEmpty()) {
        Map<NeedAt, List<Way>> usable = new LinkedHashMap<>();
        for (NeedAt need : needs) {
          usable.put(
              need,
              ways.getOrDefault(need, List.of()).stream()
                  .filter(way -> way.isOpen() && cell.within(way.when()))
                  .toList());
        }
        groups.add(new Group(cell, usable));
      }
    }
    return groups;
  }
}
