package org.loomwright.drawing.board;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.drawing.board.Piece.Knot;

/** A part of the tree that goes on one sheet as a whole, or is cut further. */
final class Part {
  private final List<Piece> pieces;
  private final Map<Knot, List<Piece>> beside = new LinkedHashMap<>();
  private final Map<Knot, Map<Knot, Double>> distances = new HashMap<>();

  Part(List<Piece> pieces) {
    this.pieces = List.copyOf(pieces);
    for (Piece piece : pieces) {
      beside.computeIfAbsent(piece.first(), any -> new ArrayList<>()).add(piece);
      beside.computeIfAbsent(piece.second(), any -> new ArrayList<>()).add(piece);
    }
  }

  /** A stretch of a way through the part, walked from one knot to the other. */
  record Step(Piece piece, Knot start) {
    Knot end() {
      return piece.other(start);
    }
  }

  List<Piece> pieces() {
    return pieces;
  }

  List<Piece> at(Knot knot) {
    return beside.getOrDefault(knot, List.of());
  }

  double lengthMm() {
    return pieces.stream().mapToDouble(Piece::lengthMm).sum();
  }

  /** Distance along the part between two of its knots, mm. */
  double distanceMm(Knot one, Knot other) {
    return distances
        .computeIfAbsent(one, start -> reach(start, Set.of()))
        .getOrDefault(other, Double.POSITIVE_INFINITY);
  }

  /** The longest way through the whole part, from the tip that was named first. */
  List<Step> spine() {
    Knot any = pieces.get(0).first();
    Knot one = farthest(reach(any, Set.of()));
    Knot other = farthest(reach(one, Set.of()));
    List<Step> way = new ArrayList<>();
    boolean isInOrder = one.id() < other.id();
    find(isInOrder ? one : other, isInOrder ? other : one, new LinkedHashSet<>(), way);
    return way;
  }

  /** The longest way from a knot that enters no piece of those given. */
  List<Step> wayFrom(Knot start, Set<Piece> closed) {
    Knot goal = farthest(reach(start, closed));
    List<Step> way = new ArrayList<>();
    find(start, goal, new LinkedHashSet<>(closed), way);
    return way;
  }

  /** All pieces beyond a knot that are reached through one of its pieces. */
  List<Piece> beyond(Knot knot, Piece through) {
    List<Piece> found = new ArrayList<>();
    Deque<Step> open = new ArrayDeque<>();
    open.add(new Step(through, knot));
    while (!open.isEmpty()) {
      Step step = open.remove();
      found.add(step.piece());
      for (Piece next : at(step.end())) {
        if (!next.equals(step.piece())) {
          open.add(new Step(next, step.end()));
        }
      }
    }
    return found;
  }

  private boolean find(Knot at, Knot goal, Set<Piece> used, List<Step> way) {
    if (at.equals(goal)) {
      return true;
    }
    for (Piece piece : at(at)) {
      if (used.add(piece)) {
        way.add(new Step(piece, at));
        if (find(piece.other(at), goal, used, way)) {
          return true;
        }
        way.remove(way.size() - 1);
      }
    }
    return false;
  }

  private Map<Knot, Double> reach(Knot start, Set<Piece> closed) {
    Map<Knot, Double> reached = new LinkedHashMap<>();
    Deque<Knot> open = new ArrayDeque<>();
    reached.put(start, 0.0);
    open.add(start);
    while (!open.isEmpty()) {
      Knot at = open.remove();
      double soFar = reached.getOrDefault(at, 0.0);
      for (Piece piece : at(at)) {
        Knot next = piece.other(at);
        if (!closed.contains(piece)
            && reached.putIfAbsent(next, soFar + piece.lengthMm()) == null) {
          open.add(next);
        }
      }
    }
    return reached;
  }

  private static Knot farthest(Map<Knot, Double> reached) {
    Knot best = reached.keySet().iterator().next();
    double most = -1;
    for (Map.Entry<Knot, Double> entry : reached.entrySet()) {
      if (entry.getValue() > most + 1e-9) {
        most = entry.getValue();
        best = entry.getKey();
      }
    }
    return best;
  }
}
