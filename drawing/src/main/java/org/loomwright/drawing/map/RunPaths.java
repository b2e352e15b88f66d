package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.model.vehicle.PlanView;

/** The lines along which runs are drawn. */
final class RunPaths {
  /** How far a run bends out of a straight line to keep clear, mm; straight first. */
  private static final double[] BENDS = {0, 7, -7, 13, -13, 20, -20, 28, -28, 38, -38};

  private RunPaths() {}

  /**
   * The line of each run, from its one stop to the other: over its marked bends, or straight, or
   * bent once where a straight line would run into stops or along other runs.
   *
   * @param radiusMm radius of the stops
   * @param widthMm width of the map; no line leaves it
   */
  static List<List<Spot>> of(
      RunGraph graph, MapLayout layout, Optional<PlanView> view, double radiusMm, double widthMm) {
    List<List<Spot>> paths = new ArrayList<>();
    List<Segment> lines = new ArrayList<>();
    for (MapRun run : graph.runs()) {
      List<Spot> path =
          marked(graph, run)
              ? marked(graph, layout, view, run, radiusMm, widthMm)
              : clear(graph, layout, run, radiusMm, widthMm, lines);
      paths.add(path);
      lines.addAll(Segment.through(path));
    }
    return paths;
  }

  private static boolean marked(RunGraph graph, MapRun run) {
    return !run.bends().isEmpty()
        && graph.stops().get(run.from()).at().isPresent()
        && graph.stops().get(run.to()).at().isPresent();
  }

  private static List<Spot> marked(
      RunGraph graph,
      MapLayout layout,
      Optional<PlanView> view,
      MapRun run,
      double radiusMm,
      double widthMm) {
    Spot from = layout.at().get(run.from());
    Spot to = layout.at().get(run.to());
    List<Spot> path = new ArrayList<>(List.of(from));
    for (Spot bend : run.bends()) {
      Spot marked = layout.drawn(bend, graph, view);
      // The outer tracks of a broad bundle reach farther out where it bends.
      double edge = Plane.MITER_MOST * radiusMm + 0.5;
      Spot drawn = new Spot(Math.min(widthMm - edge, Math.max(edge, marked.x())), marked.y());
      boolean clear =
          Plane.apart(drawn, from) > 1.3 * radiusMm
              && Plane.apart(drawn, to) > 1.3 * radiusMm
              && Plane.apart(drawn, path.get(path.size() - 1)) > 0.5;
      if (clear) {
        path.add(drawn);
      }
    }
    path.add(to);
    return List.copyOf(path);
  }

  private static List<Spot> clear(
      RunGraph graph,
      MapLayout layout,
      MapRun run,
      double radiusMm,
      double widthMm,
      List<Segment> lines) {
    Spot from = layout.at().get(run.from());
    Spot to = layout.at().get(run.to());
    List<Spot> best = List.of(from, to);
    double least = Double.POSITIVE_INFINITY;
    for (double bend : BENDS) {
      List<Spot> trial = bent(from, to, bend);
      double cost = Math.abs(bend) / 10;
      for (Spot corner : trial) {
        cost += corner.x() < radiusMm || corner.x() > widthMm - radiusMm ? 1000 : 0;
      }
      for (Segment part : Segment.through(trial)) {
        for (int i = 0; i < layout.at().size(); i++) {
          boolean other = i != run.from() && i != run.to();
          if (other && Plane.apart(layout.at().get(i), part) < radiusMm + 1.5) {
            cost += graph.stops().get(i).used() ? 20 : 15;
          }
        }
        Spot middle = Plane.between(part.from(), part.to(), 0.5);
        for (Segment line : lines) {
          cost += Plane.cross(part, line) ? 8 : 0;
          cost += Plane.apart(middle, line) < 1.5 ? 8 : 0;
        }
      }
      if (cost < least - 1e-9) {
        least = cost;
        best = trial;
      }
    }
    return best;
  }

  /** A line that leaves the straight one by some amount over its middle half. */
  private static List<Spot> bent(Spot from, Spot to, double by) {
    if (by == 0) {
      return List.of(from, to);
    }
    double across = Plane.angle(from, to) + Math.PI / 2;
    return List.of(
        from,
        Plane.away(Plane.between(from, to, 0.25), across, by),
        Plane.away(Plane.between(from, to, 0.75), across, by),
        to);
  }
}
