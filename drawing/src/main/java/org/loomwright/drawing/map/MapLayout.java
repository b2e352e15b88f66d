package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.model.vehicle.PlanView;

/**
 * Where stops lie. Marked positions win; stops that nobody has marked go beside a neighbour at
 * about the true distance, or where no stop of theirs is marked, into columns and rows.
 *
 * @param at position of each stop, mm
 * @param ground where the plan view lies; empty where no stop has a marked position
 * @param scale drawn mm of a mm of the vehicle; 0 without a ground
 */
record MapLayout(List<Spot> at, Optional<Box> ground, double scale) {
  /** Highest plan view, mm. */
  private static final double GROUND_MOST_MM = 150;

  /** Stops are never nearer to each other. */
  private static final double NEAREST_MM = 9;

  private static final double STEP_LEAST_MM = 16;
  private static final double STEP_MOST_MM = 45;
  private static final int DIRECTIONS = 16;
  private static final int ROUNDS = 60;

  MapLayout {
    at = List.copyOf(at);
  }

  /**
   * Lays out all stops between two edges.
   *
   * @param rowMm distance of rows where stops are laid out in rows
   */
  static MapLayout of(
      RunGraph graph, Optional<PlanView> view, double left, double right, double rowMm) {
    Spot[] at = new Spot[graph.stops().size()];
    List<Integer> marked = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      if (graph.stops().get(i).at().isPresent()) {
        marked.add(i);
      }
    }
    if (marked.isEmpty()) {
      List<Integer> all = new ArrayList<>();
      for (int i = 0; i < at.length; i++) {
        all.add(i);
      }
      Layers.place(graph, all, left, right, 0, rowMm, at);
      return new MapLayout(spread(at, new Box(left, -1e6, right, 1e6)), Optional.empty(), 0);
    }
    Box seen = seen(graph, view);
    double scale =
        Math.min((right - left) / seen.width(), GROUND_MOST_MM / Math.max(1, seen.height()));
    double side = left + (right - left - scale * seen.width()) / 2;
    Box ground = Box.at(side, 0, scale * seen.width(), scale * seen.height());
    for (int i : marked) {
      at[i] = drawn(graph.stops().get(i).at().orElseThrow(), seen, ground, scale);
    }
    Box frame = new Box(left, -40, right, ground.bottom() + 40);
    besides(graph, at, frame, scale);
    List<Integer> rest = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      if (at[i] == null) {
        rest.add(i);
      }
    }
    double lowest = Arrays.stream(at).filter(it -> it != null).mapToDouble(Spot::y).max().orElse(0);
    if (!rest.isEmpty()) {
      double top = Math.max(lowest, ground.bottom()) + rowMm;
      Layers.place(graph, rest, left, right, top, rowMm, at);
    }
    return new MapLayout(spread(at, new Box(left, -1e6, right, 1e6)), Optional.of(ground), scale);
  }

  /** A point of the plan view on the drawing. */
  Spot drawn(Spot inVehicle, RunGraph graph, Optional<PlanView> view) {
    Box box = ground.orElseThrow();
    return drawn(inVehicle, seen(graph, view), box, scale);
  }

  /** Least distance of two stops, mm; large for a single one. */
  double leastApart() {
    double least = 100;
    for (int i = 0; i < at.size(); i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, Plane.apart(at.get(i), at.get(j)));
      }
    }
    return least;
  }

  /** What of the vehicle is seen: its plan view, or the room round all positions. */
  private static Box seen(RunGraph graph, Optional<PlanView> view) {
    if (view.isPresent()) {
      return new Box(0, 0, view.get().along().mm(), view.get().down().mm());
    }
    List<Spot> spots =
        Stream.concat(
                graph.stops().stream().flatMap(it -> it.at().stream()),
                graph.runs().stream().flatMap(it -> it.bends().stream()))
            .toList();
    double left = spots.stream().mapToDouble(Spot::x).min().orElse(0);
    double top = spots.stream().mapToDouble(Spot::y).min().orElse(0);
    double right = spots.stream().mapToDouble(Spot::x).max().orElse(0);
    double bottom = spots.stream().mapToDouble(Spot::y).max().orElse(0);
    double edge = Math.max(100, 0.06 * Math.max(right - left, bottom - top));
    return new Box(left, top, right, bottom).grown(edge);
  }

  private static Spot drawn(Spot it, Box seen, Box ground, double scale) {
    return new Spot(
        ground.left() + scale * (it.x() - seen.left()),
        ground.top() + scale * (it.y() - seen.top()));
  }

  /** Places stops beside a neighbour that has its place already. */
  private static void besides(RunGraph graph, Spot[] at, Box frame, double scale) {
    boolean found = true;
    while (found) {
      found = false;
      for (MapRun run : graph.runs()) {
        if (at[run.from()] == null ^ at[run.to()] == null) {
          int known = at[run.from()] == null ? run.to() : run.from();
          int open = at[run.from()] == null ? run.from() : run.to();
          at[open] = beside(graph, at, run, known, open, frame, scale);
          found = true;
          break;
        }
      }
    }
  }

  private static Spot beside(
      RunGraph graph, Spot[] at, MapRun by, int known, int open, Box frame, double scale) {
    Spot from = at[known];
    double step = Math.min(STEP_MOST_MM, Math.max(STEP_LEAST_MM, scale * by.lengthMm()));
    Spot best = from;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < DIRECTIONS; i++) {
      Spot trial = Plane.away(from, 2 * Math.PI * i / DIRECTIONS, step);
      // Level and upright ways first.
      double cost = i % 4 == 0 ? 0 : i % 2 == 0 ? 1 : 2;
      cost += Plane.apart(trial, frame) > 0 ? 1000 : 0;
      for (Spot other : at) {
        if (other != null) {
          cost += Math.max(0, 1.4 * STEP_LEAST_MM - Plane.apart(trial, other)) * 3;
        }
      }
      for (MapRun run : graph.runs()) {
        boolean own = run.from() == open || run.to() == open;
        int far = run.from() == open ? run.to() : run.from();
        if (own && at[far] != null) {
          double wanted = Math.max(STEP_LEAST_MM, scale * run.lengthMm());
          cost += 0.3 * Math.abs(Plane.apart(trial, at[far]) - wanted);
        } else if (!own && at[run.from()] != null && at[run.to()] != null) {
          Segment line = new Segment(at[run.from()], at[run.to()]);
          cost += Plane.cross(line, new Segment(from, trial)) ? 30 : 0;
          cost += Math.max(0, 8 - Plane.apart(trial, line)) * 3;
        }
      }
      if (cost < least) {
        least = cost;
        best = trial;
      }
    }
    return best;
  }

  /** Pushes stops apart that lie nearly on one another. */
  private static List<Spot> spread(Spot[] at, Box frame) {
    for (int round = 0; round < ROUNDS; round++) {
      boolean moved = false;
      for (int i = 0; i < at.length; i++) {
        for (int j = 0; j < i; j++) {
          double apart = Plane.apart(at[i], at[j]);
          if (apart >= NEAREST_MM - 1e-6) {
            continue;
          }
          double angle = apart < 1e-6 ? i + j : Plane.angle(at[j], at[i]);
          double by = (NEAREST_MM - apart) / 2 + 0.01;
          at[i] = Plane.nearest(Plane.away(at[i], angle, by), frame);
          at[j] = Plane.nearest(Plane.away(at[j], angle + Math.PI, by), frame);
          moved = true;
        }
      }
      if (!moved) {
        break;
      }
    }
    return List.of(at);
  }
}
