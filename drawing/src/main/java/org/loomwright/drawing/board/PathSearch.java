package org.loomwright.drawing.board;

import java.util.List;
import org.loomwright.drawing.board.Draft.LaidPiece;
import org.loomwright.drawing.board.Draft.LaidTip;
import org.loomwright.drawing.board.Part.Step;

/**
 * Lays a way through a part, piece after piece, each as straight as can be, and goes back on what
 * leads nowhere. Stops after a given number of tries with the most pieces laid so far.
 */
final class PathSearch {
  /** Straight part at both ends of a piece with bends, mm; leaves room for pegs. */
  private static final double STUB_MM = 20;

  private final Draft draft;
  private final Part part;
  private final List<Step> way;
  private final double riseMm;
  private final boolean mayBend;
  private int triesLeft;
  private int most;
  private List<LaidPiece> bestPieces = List.of();
  private List<LaidTip> bestTips = List.of();
  private final int[] before;

  private PathSearch(
      Draft draft, Part part, List<Step> way, double riseMm, boolean mayBend, int tries) {
    this.draft = draft;
    this.part = part;
    this.way = way;
    this.riseMm = riseMm;
    this.mayBend = mayBend;
    this.triesLeft = tries;
    this.before = draft.state();
  }

  /**
   * Lays as many steps as found possible.
   *
   * @param riseMm distance between rows to try first where the way turns back
   * @param tries how many shapes to try in all
   * @return how many steps were laid, from the first
   */
  static int run(
      Draft draft, Part part, List<Step> way, Point start, int heading, double riseMm, int tries) {
    return new PathSearch(draft, part, way, riseMm, true, tries).lay(start, heading);
  }

  /** Lays as many steps as lie straight one after the other; returns how many. */
  static int straight(Draft draft, Part part, List<Step> way, Point start, int heading) {
    return new PathSearch(draft, part, way, 0, false, way.size()).lay(start, heading);
  }

  private int lay(Point start, int heading) {
    if (go(0, start, heading)) {
      return way.size();
    }
    draft.back(before);
    draft.pieces().addAll(bestPieces);
    draft.tips().addAll(bestTips);
    return most;
  }

  /** Whether all steps from the given one on can be laid. */
  private boolean go(int index, Point at, int heading) {
    if (index == way.size()) {
      return true;
    }
    Step step = way.get(index);
    double diameter = step.piece().branch().diameterMm();
    Board board = draft.board();
    Box inside = board.inside().grown(-diameter / 2);
    double length = step.piece().lengthMm();
    if (tryAll(index, Shapes.straight(at, heading, length, inside))) {
      return true;
    }
    if (!mayBend || triesLeft <= 0) {
      return false;
    }
    double radius =
        Math.max(board.bendRatio() * diameter, (board.clearanceMm() + diameter) / 2 + 1);
    return tryAll(index, Shapes.bent(at, heading, length, radius, STUB_MM, inside, riseMm));
  }

  private boolean tryAll(int index, List<Trail> trails) {
    for (Trail trail : trails) {
      if (triesLeft-- <= 0) {
        return false;
      }
      int[] state = draft.state();
      if (draft.lay(part, way.get(index), trail)) {
        if (index + 1 > most) {
          most = index + 1;
          bestPieces = List.copyOf(draft.pieces().subList(before[0], draft.pieces().size()));
          bestTips = List.copyOf(draft.tips().subList(before[1], draft.tips().size()));
        }
        if (go(index + 1, trail.tip(), trail.headingDegrees())) {
          return true;
        }
        draft.back(state);
      }
    }
    return false;
  }
}
