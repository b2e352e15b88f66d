package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.planner.landing.Touch;

/**
 * What leaves the bundles at a place, and how long it is: slack, a service loop to make a terminal
 * again once, and the reach to the far cavity of a face, rounded up to what a bench measures. All
 * leads that end in the same thing are as long behind the place.
 */
final class Tails {
  /** Tails are measured with a ruler on a bench, mm. */
  private static final double STEP_MM = 5;

  private final KitOrder order;
  private final Map<Key, Double> lengthMm = new LinkedHashMap<>();
  private final Map<Key, List<End>> ends = new LinkedHashMap<>();

  /** What leads end in. */
  record Key(Tail.Kind kind, String subject, String place) {}

  /** An end of a strand. */
  record End(Strand strand, boolean sideA) {}

  Tails(KitOrder order, List<Strand> strands) {
    this.order = order;
    for (Strand strand : strands) {
      for (boolean sideA : new boolean[] {true, false}) {
        key(strand.made(sideA))
            .ifPresent(
                key -> {
                  ends.computeIfAbsent(key, k -> new ArrayList<>()).add(new End(strand, sideA));
                  lengthMm.merge(key, longestMm(strand, sideA), Math::max);
                });
      }
    }
  }

  /** The tails in the order of the strands, with their ends. */
  Map<Key, List<End>> all() {
    return ends;
  }

  /** Length of the tail behind a thing, mm. */
  double lengthMm(Key key) {
    Double length = lengthMm.get(key);
    if (length == null) {
      throw new IllegalArgumentException("no lead ends in " + key);
    }
    return length;
  }

  /** What an end ends in; empty for a joint, which lies in the bundle. */
  static Optional<Key> key(Touch touch) {
    if (touch instanceof Touch.AtCavity at) {
      return Optional.of(new Key(Tail.Kind.CONNECTOR, at.connector(), at.place()));
    } else if (touch instanceof Touch.AtHousing at) {
      return Optional.of(new Key(Tail.Kind.HOUSING, at.mount(), at.place()));
    } else if (touch instanceof Touch.AtSlot at) {
      return Optional.of(new Key(Tail.Kind.BLOCK, at.block(), at.place()));
    } else if (touch instanceof Touch.AtGround at) {
      return Optional.of(new Key(Tail.Kind.GROUND, at.ground(), at.place()));
    } else if (touch instanceof Touch.AtCircuit at) {
      return Optional.of(new Key(Tail.Kind.CIRCUIT, at.circuit(), at.place()));
    } else if (touch instanceof Touch.AtLoose at) {
      return Optional.of(new Key(Tail.Kind.LOOSE, at.place(), at.place()));
    }
    return Optional.empty();
  }

  /** Longest tail that any landing of an end asks for, joints aside, mm; 0 for joints only. */
  double longestMm(Strand strand, boolean sideA) {
    return strand.touches(sideA).keySet().stream()
        .filter(touch -> !(touch instanceof Touch.AtJoint))
        .mapToDouble(
            touch ->
                order.rules().slackPerEnd().value().mm()
                    + order.rules().serviceLoop().value().mm()
                    + reachMm(touch))
        .map(mm -> Math.ceil(mm / STEP_MM - 1e-9) * STEP_MM)
        .max()
        .orElse(0);
  }

  /** Distance between the two cavities that are farthest apart on the face of an end, mm. */
  double reachMm(Touch touch) {
    Optional<String> part = Optional.empty();
    if (touch instanceof Touch.AtCavity at) {
      part = order.vehicle().connector(at.connector()).map(Connector::housing);
    } else if (touch instanceof Touch.AtHousing at) {
      part = Optional.of(at.housing());
    } else if (touch instanceof Touch.AtSlot at) {
      part = order.vehicle().fuseBlock(at.block()).flatMap(FuseBlock::face);
    }
    return part.flatMap(order.parts()::housing).map(Tails::widestMm).orElse(0.0);
  }

  private static double widestMm(Housing housing) {
    double widest = 0;
    for (Cavity one : housing.cavities()) {
      for (Cavity other : housing.cavities()) {
        widest =
            Math.max(
                widest, Math.hypot(one.x().mm() - other.x().mm(), one.y().mm() - other.y().mm()));
      }
    }
    return widest;
  }
}
