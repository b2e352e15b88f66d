package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.Part.Step;
import org.loomwright.drawing.board.Piece.Knot;

/**
 * A sheet being filled. Takes only what keeps all distances, and can go back to an earlier state.
 */
final class Draft {
  /** Room of a match line's letter, mm. */
  static final double LETTER_MM = 14;

  /** Free strip between an end and its table, mm. */
  static final double TABLE_GAP_MM = 4;

  /**
   * Branches may come near each other where they meet: as far along the harness as this many times
   * the distance that they keep elsewhere.
   */
  static final double MEETING_RATIO = 2;

  /**
   * Bundles may lie on each other right at a junction: while the way between two places along the
   * harness is shorter than this many times the distance of two middles that touch. Two branches
   * that part by 45° are clear of each other after 2.42 times that distance.
   */
  static final double ROOT_RATIO = 3;

  private static final double OVERLAP_STEP_MM = 2;

  private final Board board;
  private final List<LaidPiece> pieces = new ArrayList<>();
  private final List<LaidTip> tips = new ArrayList<>();

  Draft(Board board) {
    this.board = board;
  }

  /** A piece where it lies; its line runs from the first knot to the second. */
  record LaidPiece(Part part, Piece piece, List<Point> line, int bends, Box around) {}

  /** An end or a match line's letter where it lies. */
  record LaidTip(
      Knot knot, Piece piece, Point at, int headingDegrees, Box body, Optional<Box> table) {}

  Board board() {
    return board;
  }

  List<LaidPiece> pieces() {
    return pieces;
  }

  List<LaidTip> tips() {
    return tips;
  }

  int[] state() {
    return new int[] {pieces.size(), tips.size()};
  }

  void back(int[] state) {
    pieces.subList(state[0], pieces.size()).clear();
    tips.subList(state[1], tips.size()).clear();
  }

  double apartMm(Piece one, Piece other) {
    return board.clearanceMm() + (one.branch().diameterMm() + other.branch().diameterMm()) / 2;
  }

  /** Lays a piece along a trail, with the ends at its knots, if there is room. */
  boolean lay(Part part, Step step, Trail trail) {
    Piece piece = step.piece();
    boolean forward = step.start().equals(piece.first());
    List<Point> line = forward ? trail.points() : Lines.reversed(trail.points());
    LaidPiece laid = new LaidPiece(part, piece, line, trail.bends(), Lines.around(line));
    if (!isFree(laid)) {
      return false;
    }
    int[] before = state();
    pieces.add(laid);
    Point start = trail.points().get(0);
    int startHeading = headingDegrees(trail.points().get(1), start);
    if (tip(laid, step.start(), start, startHeading)
        && tip(laid, step.end(), trail.tip(), trail.headingDegrees())) {
      return true;
    }
    back(before);
    return false;
  }

  static int headingDegrees(Point from, Point to) {
    double angle = Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
    return Math.floorMod((int) Math.round(angle / 45) * 45, 360);
  }

  private boolean isFree(LaidPiece fresh) {
    double half = fresh.piece().branch().diameterMm() / 2;
    for (LaidTip tip : tips) {
      double mm = board.clearanceMm() + half;
      if (Lines.nearer(fresh.line(), fresh.around(), tip.body(), mm)
          || (tip.table().isPresent()
              && Lines.nearer(fresh.line(), fresh.around(), tip.table().get(), mm))) {
        return false;
      }
    }
    for (LaidPiece other : pieces) {
      double apart = apartMm(fresh.piece(), other.piece());
      if (fresh.around().isNearer(other.around(), apart) && clash(fresh, other, apart)) {
        return false;
      }
    }
    return true;
  }

  private boolean clash(LaidPiece fresh, LaidPiece other, double apartMm) {
    double along = Double.POSITIVE_INFINITY;
    boolean freshAtFirst = true;
    boolean otherAtFirst = true;
    if (fresh.part() == other.part()) {
      for (Knot mine : List.of(fresh.piece().first(), fresh.piece().second())) {
        for (Knot its : List.of(other.piece().first(), other.piece().second())) {
          double distance = fresh.part().distanceMm(mine, its);
          if (distance < along) {
            along = distance;
            freshAtFirst = mine.equals(fresh.piece().first());
            otherAtFirst = its.equals(other.piece().first());
          }
        }
      }
    }
    double freeMm = MEETING_RATIO * apartMm - along;
    if (freeMm <= 0) {
      return Lines.nearer(fresh.line(), other.line(), apartMm);
    }
    List<Point> mine = freshAtFirst ? fresh.line() : Lines.reversed(fresh.line());
    List<Point> its = otherAtFirst ? other.line() : Lines.reversed(other.line());
    double far = Double.POSITIVE_INFINITY;
    return (along == 0 ? turnsAway(mine, its) : Lines.nearer(mine, its, 1e-3))
        || Lines.nearer(Lines.between(mine, freeMm, far), its, apartMm)
        || Lines.nearer(mine, Lines.between(its, freeMm, far), apartMm)
        || overlaps(mine, its, along, freeMm, apartMm - board.clearanceMm());
  }

  /**
   * Whether bundles lie on each other where they come near because they meet. Right at a junction
   * they must: two places of different branches may do so while the way between them along the
   * harness is shorter than so many times the distance of two middles that touch.
   *
   * @param alongMm way along the harness between the starts of both lines, mm
   * @param freeMm how much of the lines to look at, mm
   * @param touchMm distance of the middles of two bundles that touch, mm
   */
  private static boolean overlaps(
      List<Point> mine, List<Point> its, double alongMm, double freeMm, double touchMm) {
    return overlapsOneWay(mine, its, alongMm, freeMm, touchMm)
        || overlapsOneWay(its, mine, alongMm, freeMm, touchMm);
  }

  private static boolean overlapsOneWay(
      List<Point> mine, List<Point> its, double alongMm, double freeMm, double touchMm) {
    double mostMm = Math.min(freeMm, Lines.lengthMm(mine));
    int steps = (int) Math.ceil(mostMm / OVERLAP_STEP_MM);
    for (int i = 0; i <= steps; i++) {
      double atMm = mostMm * i / Math.max(1, steps);
      Point at = Lines.place(mine, atMm).at();
      double fromMm = ROOT_RATIO * touchMm - alongMm - atMm;
      List<Point> rest = fromMm <= 0 ? its : Lines.between(its, fromMm, Double.POSITIVE_INFINITY);
      if (Lines.nearer(List.of(at, at), rest, touchMm)) {
        return true;
      }
    }
    return false;
  }

  /** Whether two lines from one point leave it too close, or meet again. */
  private static boolean turnsAway(List<Point> mine, List<Point> its) {
    int between =
        Math.floorMod(
            headingDegrees(mine.get(0), mine.get(1)) - headingDegrees(its.get(0), its.get(1)), 360);
    return Math.min(between, 360 - between) < 45
        || (mine.size() > 2 && Lines.nearer(mine.subList(1, mine.size()), its, 1e-3))
        || (its.size() > 2 && Lines.nearer(mine, its.subList(1, its.size()), 1e-3));
  }

  private boolean tip(LaidPiece laid, Knot knot, Point at, int heading) {
    double width = LETTER_MM;
    double height = LETTER_MM;
    Optional<End> end = Optional.empty();
    if (knot.node().isPresent()) {
      if (!(knot.node().get() instanceof End found)) {
        return true;
      }
      end = Optional.of(found);
      width = found.widthMm();
      height = found.heightMm();
    }
    Box body = TipBoxes.body(at, heading, width, height);
    // Just the last straight part touches the body.
    if (!isFree(body, laid) || Lines.nearer(laid.line(), laid.around(), body.grown(-1e-6), 1e-9)) {
      return false;
    }
    if (end.isEmpty() || !end.get().hasTable()) {
      tips.add(new LaidTip(knot, laid.piece(), at, heading, body, Optional.empty()));
      return true;
    }
    for (Box table :
        TipBoxes.tables(body, heading, end.get().tableWidthMm(), end.get().tableHeightMm())) {
      double own = laid.piece().branch().diameterMm() / 2 + TABLE_GAP_MM / 2;
      if (!Lines.nearer(laid.line(), laid.around(), table, own) && isFree(table, laid)) {
        tips.add(new LaidTip(knot, laid.piece(), at, heading, body, Optional.of(table)));
        return true;
      }
    }
    return false;
  }

  private boolean isFree(Box box, LaidPiece own) {
    if (!board.inside().holds(box)) {
      return false;
    }
    for (LaidTip tip : tips) {
      if (tip.body().isNearer(box, board.clearanceMm())
          || (tip.table().isPresent() && tip.table().get().isNearer(box, board.clearanceMm()))) {
        return false;
      }
    }
    for (LaidPiece laid : pieces) {
      double mm = board.clearanceMm() + laid.piece().branch().diameterMm() / 2;
      if (laid != own && Lines.nearer(laid.line(), laid.around(), box, mm)) {
        return false;
      }
    }
    return true;
  }
}
