package org.loomwright.planner.ways;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.landing.Touch;

/** What has to be open to reach an end, and how an end can be taken back. */
public final class Reach {
  private Reach() {}

  /** Openings to open, outermost first. */
  public static List<String> openings(Vehicle vehicle, Touch touch) {
    if (touch instanceof Touch.AtHousing) {
      // Filled on the bench; reaching the place is the equipment's business.
      return List.of();
    }
    List<String> direct = new ArrayList<>();
    if (touch instanceof Touch.AtCavity at) {
      direct.addAll(vehicle.connector(at.connector()).map(Connector::openings).orElse(List.of()));
    } else if (touch instanceof Touch.AtSlot at) {
      direct.addAll(vehicle.fuseBlock(at.block()).map(FuseBlock::openings).orElse(List.of()));
    } else if (touch instanceof Touch.AtGround at) {
      direct.addAll(vehicle.ground(at.ground()).map(GroundStud::openings).orElse(List.of()));
    } else {
      direct.addAll(atPlace(vehicle, touch.place()));
    }
    return inOrder(vehicle, direct);
  }

  /** The same openings with those they lie behind, outermost first, each once. */
  public static List<String> inOrder(Vehicle vehicle, List<String> openings) {
    Set<String> ordered = new LinkedHashSet<>();
    for (String opening : openings) {
      collect(vehicle, opening, ordered);
    }
    return List.copyOf(ordered);
  }

  private static void collect(Vehicle vehicle, String opening, Set<String> ordered) {
    if (!ordered.contains(opening)) {
      vehicle
          .opening(opening)
          .ifPresent(it -> it.behind().forEach(outer -> collect(vehicle, outer, ordered)));
      ordered.add(opening);
    }
  }

  // Work at a bare place, such as a splice or a parked end, needs the panels at that place, not the
  // covers that only lead into a fuse block.
  private static List<String> atPlace(Vehicle vehicle, String place) {
    return vehicle.openings().stream()
        .filter(it -> it.place().equals(place))
        .map(Opening::id)
        .filter(it -> !onlyForBlocks(vehicle, it))
        .toList();
  }

  private static boolean onlyForBlocks(Vehicle vehicle, String opening) {
    return vehicle.fuseBlocks().stream().anyMatch(it -> it.openings().contains(opening))
        && vehicle.connectors().stream().noneMatch(it -> it.openings().contains(opening))
        && vehicle.grounds().stream().noneMatch(it -> it.openings().contains(opening));
  }

  /** How landing an end can be taken back. */
  public static Undo undo(Vehicle vehicle, Touch touch) {
    if (touch instanceof Touch.AtCavity at) {
      return vehicle
          .connector(at.connector())
          .map(it -> it.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    } else if (touch instanceof Touch.AtSlot at) {
      return vehicle
          .fuseBlock(at.block())
          .map(it -> it.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    }
    // A cut into a factory wire stays.
    return touch instanceof Touch.AtCircuit ? Undo.NOT_AT_ALL : Undo.EASILY;
  }

  /** The harder of two. */
  public static Undo harder(Undo one, Undo other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
