package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;

/**
 * Positions for stops that nobody has marked: each connected part of the runs as a tree of columns
 * and rows, runs in use first into the tree; branches change sides as long as that saves a crossing
 * with the runs left over.
 */
final class Layers {
  private static final double COLUMN_LEAST_MM = 17;
  private static final double COLUMN_MOST_MM = 62;

  private final RunGraph graph;
  private final List<List<Integer>> tree = new ArrayList<>();
  private final List<MapRun> left = new ArrayList<>();

  private Layers(RunGraph graph, List<Integer> nodes) {
    this.graph = graph;
    graph.stops().forEach(it -> tree.add(new ArrayList<>()));
    int[] part = new int[graph.stops().size()];
    for (int i = 0; i < part.length; i++) {
      part[i] = i;
    }
    for (RunState state : RunState.values()) {
      for (MapRun run : graph.runs()) {
        if (run.state() != state || !nodes.contains(run.from()) || !nodes.contains(run.to())) {
          continue;
        }
        int one = root(part, run.from());
        int other = root(part, run.to());
        if (one == other) {
          left.add(run);
        } else {
          part[one] = other;
          tree.get(run.from()).add(run.to());
          tree.get(run.to()).add(run.from());
        }
      }
    }
  }

  private static int root(int[] part, int node) {
    int at = node;
    while (part[at] != at) {
      at = part[at];
    }
    return at;
  }

  /**
   * Lays out some stops.
   *
   * @param nodes indices of the stops
   * @param left left edge, mm
   * @param right right edge, mm
   * @param top height of the uppermost row, mm
   * @param rowMm distance of rows where there is room
   * @param at positions by index; those of the nodes are set
   */
  static void place(
      RunGraph graph,
      List<Integer> nodes,
      double left,
      double right,
      double top,
      double rowMm,
      Spot[] at) {
    Layers layers = new Layers(graph, nodes);
    List<Integer> open = new ArrayList<>(nodes);
    double from = top;
    while (!open.isEmpty()) {
      List<Integer> part = LayeredTree.reached(layers.tree, open.get(0));
      from = layers.part(part, left, right, from, rowMm, at) + rowMm;
      open.removeAll(part);
    }
  }

  /** Places a connected part; returns the height of its lowest row. */
  private double part(
      List<Integer> part, double leftMm, double rightMm, double top, double rowMm, Spot[] at) {
    LayeredTree best = untangled(part);
    int columns = part.stream().mapToInt(best::column).max().orElse(0);
    int first = part.stream().mapToInt(best::row).min().orElse(0);
    int rows = part.stream().mapToInt(best::row).max().orElse(0) - first;
    double room = rightMm - leftMm;
    boolean level =
        columns * COLUMN_LEAST_MM <= room || rows * COLUMN_LEAST_MM > room && columns <= rows;
    int across = Math.max(1, level ? columns : rows);
    double pitch = Math.min(COLUMN_MOST_MM, room / across);
    double side = leftMm + (room - pitch * (level ? columns : rows)) / 2;
    double lowest = top;
    for (int node : part) {
      int over = level ? best.column(node) : best.row(node) - first;
      int down = level ? best.row(node) - first : best.column(node);
      Spot spot = new Spot(side + over * pitch, top + down * rowMm);
      at[node] = spot;
      lowest = Math.max(lowest, spot.y());
    }
    return lowest;
  }

  private LayeredTree untangled(List<Integer> part) {
    boolean[] flipped = new boolean[graph.stops().size()];
    LayeredTree best = LayeredTree.of(tree, part.get(0), flipped.clone());
    List<MapRun> loose =
        left.stream().filter(it -> part.contains(it.from()) && it.from() != it.to()).toList();
    if (loose.isEmpty()) {
      return best;
    }
    double cost = tangle(part, best, loose);
    for (int sweep = 0; sweep < 2; sweep++) {
      for (int node : part) {
        if (tree.get(node).size() < 2) {
          continue;
        }
        flipped[node] = !flipped[node];
        LayeredTree trial = LayeredTree.of(tree, part.get(0), flipped.clone());
        double with = tangle(part, trial, loose);
        if (with < cost) {
          best = trial;
          cost = with;
        } else {
          flipped[node] = !flipped[node];
        }
      }
    }
    return best;
  }

  /** Crossings count; a stop in the way counts twice. */
  private double tangle(List<Integer> part, LayeredTree laid, List<MapRun> loose) {
    double cost = 0;
    List<Segment> lines = new ArrayList<>();
    for (int node : part) {
      for (int next : tree.get(node)) {
        if (node < next) {
          lines.add(new Segment(grid(laid, node), grid(laid, next)));
        }
      }
    }
    for (MapRun run : loose) {
      Segment own = new Segment(grid(laid, run.from()), grid(laid, run.to()));
      cost += 0.01 * own.length();
      for (Segment line : lines) {
        cost += Plane.cross(own, line) ? 1 : 0;
      }
      for (int node : part) {
        if (node != run.from() && node != run.to()) {
          cost += Plane.apart(grid(laid, node), own) < 0.2 ? 2 : 0;
        }
      }
      lines.add(own);
    }
    return cost;
  }

  private static Spot grid(LayeredTree laid, int node) {
    return new Spot(laid.column(node), laid.row(node));
  }
}
