package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.ways.Reach;

/**
 * Opens what steps need just before the first of them, once per build, and closes everything in
 * reverse order at the end.
 */
final class OpeningPlan {
  private final Vehicle vehicle;
  private final Builds builds;
  private final Map<String, Region> opened = new LinkedHashMap<>();
  private final Map<String, Integer> times = new LinkedHashMap<>();
  private final Names names;

  OpeningPlan(Vehicle vehicle, Builds builds, Names names) {
    this.vehicle = vehicle;
    this.builds = builds;
    this.names = names;
  }

  /** Steps that open what is still closed on some of the builds. */
  List<Draft> open(List<String> needed, Region on) {
    return Reach.inOrder(vehicle, needed).stream().flatMap(id -> open(id, on).stream()).toList();
  }

  private List<Draft> open(String id, Region on) {
    Region before = opened.getOrDefault(id, builds.none());
    Region closed = on.minus(before);
    if (closed.isEmpty()) {
      return List.of();
    }
    Opening opening = vehicle.opening(id).orElseThrow();
    int time = times.merge(id, 1, Integer::sum);
    opened.put(id, before.or(closed));
    return List.of(
        new Draft(
                "open/" + id + (time == 1 ? "" : "/" + time), StepKind.ACT, opening.place(), closed)
            .say(
                "Open " + opening.name(),
                opening.caution().orElse("At " + names.place(opening.place()) + "."))
            .behind(opening.behind())
            .does(new Act.Open(id), Undo.EASILY)
            .tools(opening.tools())
            .takes(opening.open().seconds() / 60));
  }

  /** Steps that open what any step of a batch needs, each opening once for all of them. */
  List<Draft> openAll(List<Draft> batch) {
    Map<String, Region> needed = new LinkedHashMap<>();
    for (Draft draft : batch) {
      for (String id : Reach.inOrder(vehicle, draft.openings())) {
        needed.merge(id, draft.on(), Region::or);
      }
    }
    List<Draft> drafts = new ArrayList<>();
    for (String id : Reach.inOrder(vehicle, List.copyOf(needed.keySet()))) {
      drafts.addAll(open(id, needed.getOrDefault(id, builds.none())));
    }
    return drafts;
  }

  /**
   * Steps that close, before power comes on, what must not be open then: openings with restraint
   * parts or the wire side of a fuse block behind them, and all that lies further in.
   */
  List<Draft> closeBeforePower(List<String> battery) {
    return close(
        opened.keySet().stream().filter(it -> battery.contains(it) || !shutForPower(it)).toList());
  }

  private boolean shutForPower(String id) {
    return Reach.inOrder(vehicle, List.of(id)).stream()
        .anyMatch(
            it ->
                vehicle.opening(it).map(Opening::restraint).orElse(false)
                    || vehicle.fuseBlocks().stream().anyMatch(b -> b.openings().contains(it)));
  }

  /** Steps that close everything but what is kept, last opened first. */
  List<Draft> close(List<String> keep) {
    List<String> order = new ArrayList<>(opened.keySet());
    java.util.Collections.reverse(order);
    List<Draft> drafts = new ArrayList<>();
    for (String id : order) {
      if (keep.contains(id)) {
        continue;
      }
      Opening opening = vehicle.opening(id).orElseThrow();
      drafts.add(
          new Draft(
                  "close/" + id,
                  StepKind.ACT,
                  opening.place(),
                  opened.getOrDefault(id, builds.none()))
              .say("Close " + opening.name(), "No wire may be pinched behind it.")
              .behind(opening.behind())
              .does(new Act.Close(id), Undo.EASILY)
              .tools(opening.tools())
              .takes(opening.close().seconds() / 60));
    }
    opened.keySet().retainAll(keep);
    return drafts;
  }
}
