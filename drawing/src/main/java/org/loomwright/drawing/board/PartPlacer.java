package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.drawing.board.Draft.LaidPiece;
import org.loomwright.drawing.board.Part.Step;
import org.loomwright.drawing.board.Piece.Knot;

/**
 * Lays a part on a sheet: its longest way first, along the board, then what leaves it to the sides,
 * then what leaves those.
 */
final class PartPlacer {
  private static final int SPINE_TRIES = 250;
  private static final int SIDE_TRIES = 60;
  private static final int EXTRA_STARTS = 3;
  private static final double SCAN_MM = 100;

  private final Draft draft;
  private final Part part;
  private final Habit habit;
  private int sideCount;

  private PartPlacer(Draft draft, Part part, Habit habit) {
    this.draft = draft;
    this.part = part;
    this.habit = habit;
  }

  /** Which side ways are laid first. */
  enum Order {
    SHORT_FIRST,
    LONG_FIRST,
    ALONG
  }

  /**
   * One way of going about it.
   *
   * @param order which side ways are laid first
   * @param side 1 or -1, the side that is tried first
   * @param share height of the spine on the board, 0 to 1 from the top
   * @param isReversed whether the spine runs the other way
   */
  record Habit(Order order, int side, double share, boolean isReversed) {}

  /** What found no room: the pieces beyond a knot, through one of its pieces. */
  record Cut(Knot knot, Piece through) {}

  /**
   * Lays a part on an empty sheet; what finds no room is cut off.
   *
   * @return the cuts, or nothing when not even the first piece finds room
   */
  static Optional<List<Cut>> alone(Draft draft, Part part, Habit habit) {
    return new PartPlacer(draft, part, habit).alone();
  }

  /** Lays a part on a sheet that holds others already, as a whole or not at all. */
  static boolean beside(Draft draft, Part part, Habit habit) {
    return new PartPlacer(draft, part, habit).beside();
  }

  private Optional<List<Cut>> alone() {
    List<Step> spine = spine();
    double straightMm = spine.stream().mapToDouble(step -> step.piece().lengthMm()).sum();
    Box inside = draft.board().inside();
    double rows = Math.ceil((straightMm + 1) / (0.8 * inside.widthMm()));
    double riseMm = inside.heightMm() / rows;
    int most = 0;
    Point best = inside.middle();
    for (Point start : starts(spine, straightMm, rows)) {
      int[] state = draft.state();
      int laid = PathSearch.run(draft, part, spine, start, 0, riseMm, SPINE_TRIES);
      if (laid == spine.size()) {
        return Optional.of(spread(spine));
      }
      draft.back(state);
      if (laid > most) {
        most = laid;
        best = start;
      }
    }
    if (most == 0) {
      return Optional.empty();
    }
    PathSearch.run(draft, part, spine, best, 0, riseMm, SPINE_TRIES);
    return Optional.of(spread(spine.subList(0, most)));
  }

  private List<Step> spine() {
    List<Step> spine = part.spine();
    if (!habit.isReversed()) {
      return spine;
    }
    List<Step> back = new ArrayList<>();
    for (int i = spine.size() - 1; i >= 0; i--) {
      back.add(new Step(spine.get(i).piece(), spine.get(i).end()));
    }
    return back;
  }

  /** Where to start: a straight spine in the middle, a folded one at the upper left. */
  private List<Point> starts(List<Step> spine, double straightMm, double rows) {
    Box inside = draft.board().inside();
    double before = tipMm(spine.get(0).start());
    double after = tipMm(spine.get(spine.size() - 1).end());
    double spare = inside.widthMm() - straightMm - before - after;
    List<Point> starts = new ArrayList<>();
    if (spare > 0) {
      for (double share : new double[] {habit.share(), 0.3, 0.7}) {
        double y = inside.yMm() + share * inside.heightMm();
        starts.add(new Point(inside.xMm() + before + spare / 2, y));
        starts.add(new Point(inside.xMm() + before, y));
      }
      return starts;
    }
    for (double share : new double[] {0.5 / rows, 0.25 / rows, habit.share()}) {
      double y = inside.yMm() + share * inside.heightMm();
      starts.add(new Point(inside.xMm() + before + 1, y));
      starts.add(new Point(inside.xMm() + inside.widthMm() / 3, y));
    }
    return starts;
  }

  private static double tipMm(Knot knot) {
    if (knot.letter().isPresent()) {
      return Draft.LETTER_MM;
    }
    return knot.node()
        .filter(BoardTree.End.class::isInstance)
        .map(BoardTree.End.class::cast)
        .map(BoardTree.End::widthMm)
        .orElse(0.0);
  }

  private boolean beside() {
    List<Step> spine = spine();
    Box inside = draft.board().inside();
    int triesLeft = EXTRA_STARTS;
    for (int heading : new int[] {0, 90}) {
      for (double y = inside.yMm() + SCAN_MM / 2; y < inside.bottomMm(); y += SCAN_MM) {
        for (double x = inside.xMm() + SCAN_MM / 2; x < inside.rightMm(); x += SCAN_MM) {
          int[] state = draft.state();
          int laid =
              PathSearch.run(draft, part, spine, new Point(x, y), heading, 0, spine.size() + 1);
          if (laid == spine.size()) {
            if (spread(spine).isEmpty()) {
              return true;
            }
            triesLeft--;
          }
          draft.back(state);
          if (triesLeft == 0) {
            return false;
          }
        }
      }
    }
    return besideFolded(spine, inside);
  }

  /** A few starts with bends allowed, for what is too long to lie straight. */
  private boolean besideFolded(List<Step> spine, Box inside) {
    for (double shareY : new double[] {0.1, 0.35, 0.6, 0.85}) {
      for (double shareX : new double[] {0.1, 0.4, 0.7}) {
        Point start =
            new Point(
                inside.xMm() + shareX * inside.widthMm(),
                inside.yMm() + shareY * inside.heightMm());
        int[] state = draft.state();
        if (PathSearch.run(draft, part, spine, start, 0, 0, SIDE_TRIES) == spine.size()
            && spread(spine).isEmpty()) {
          return true;
        }
        draft.back(state);
      }
    }
    return false;
  }

  /** Lays all that leaves a way that is laid, and what leaves that. */
  private List<Cut> spread(List<Step> way) {
    sideCount = 0;
    List<Cut> cuts = new ArrayList<>();
    List<Cut> open = new ArrayList<>();
    Set<Piece> known = new HashSet<>();
    way.forEach(step -> known.add(step.piece()));
    sides(way, known, open);
    while (!open.isEmpty()) {
      Cut side = open.remove(next(open));
      List<Step> steps = sideWay(side);
      int laid = side(side.knot(), steps);
      if (laid == 0) {
        cuts.add(side);
      } else {
        steps.subList(0, laid).forEach(step -> known.add(step.piece()));
        sides(steps.subList(0, laid), known, open);
      }
    }
    return cuts;
  }

  private void sides(List<Step> way, Set<Piece> known, List<Cut> open) {
    for (Step step : way) {
      for (Knot knot : List.of(step.start(), step.end())) {
        for (Piece piece : part.at(knot)) {
          if (known.add(piece)) {
            open.add(new Cut(knot, piece));
          }
        }
      }
    }
  }

  private List<Step> sideWay(Cut side) {
    Set<Piece> closed = new HashSet<>(part.at(side.knot()));
    closed.remove(side.through());
    return part.wayFrom(side.knot(), closed);
  }

  private int next(List<Cut> open) {
    if (habit.order() == Order.ALONG) {
      return 0;
    }
    Comparator<Integer> byLength =
        Comparator.comparingDouble(
            index ->
                sideWay(open.get(index)).stream()
                    .mapToDouble(step -> step.piece().lengthMm())
                    .sum());
    int best = 0;
    for (int i = 1; i < open.size(); i++) {
      int compared = byLength.compare(i, best);
      if (habit.order() == Order.SHORT_FIRST ? compared < 0 : compared > 0) {
        best = i;
      }
    }
    return best;
  }

  /** Lays a side way; returns how many of its steps found room. */
  private int side(Knot knot, List<Step> steps) {
    Exits exits = exits(knot);
    List<Integer> headings = headings(exits);
    int most = 0;
    int best = 0;
    for (boolean mayBend : new boolean[] {false, true}) {
      for (int heading : headings) {
        int[] state = draft.state();
        int laid =
            mayBend
                ? PathSearch.run(draft, part, steps, exits.at(), heading, 0, SIDE_TRIES)
                : PathSearch.straight(draft, part, steps, exits.at(), heading);
        if (laid == steps.size()) {
          return laid;
        }
        draft.back(state);
        if (laid > most) {
          most = laid;
          best = heading;
        }
      }
    }
    return most == 0 ? 0 : PathSearch.run(draft, part, steps, exits.at(), best, 0, SIDE_TRIES);
  }

  private record Exits(Point at, List<Integer> headings) {}

  /** Where a knot lies and which ways it is left already. */
  private Exits exits(Knot knot) {
    List<Integer> headings = new ArrayList<>();
    Point at = draft.board().inside().middle();
    for (LaidPiece laid : draft.pieces()) {
      Piece piece = laid.piece();
      if (laid.part() == part && (piece.first().equals(knot) || piece.second().equals(knot))) {
        List<Point> line = piece.first().equals(knot) ? laid.line() : Lines.reversed(laid.line());
        at = line.get(0);
        headings.add(Draft.headingDegrees(line.get(0), line.get(1)));
      }
    }
    return new Exits(at, headings);
  }

  /** Headings that are free, square ones first, one side of the way after the other. */
  private List<Integer> headings(Exits exits) {
    int forward = exits.headings().isEmpty() ? 0 : exits.headings().get(0) + 180;
    int side = habit.side() * (sideCount++ % 2 == 0 ? -1 : 1);
    List<Integer> headings = new ArrayList<>();
    for (int turn : new int[] {90, -90, 0, 45, -45, 135, -135}) {
      int heading = Math.floorMod(forward + side * turn, 360);
      if (!exits.headings().contains(heading)) {
        headings.add(heading);
      }
    }
    return headings;
  }
}
