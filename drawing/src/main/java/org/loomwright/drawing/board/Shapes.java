package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Ways to lay one piece from where it starts: straight, with a bend, turned back, or folded. Fewer
 * bends come first.
 */
final class Shapes {
  private static final int MOST_FOLDS = 9;

  private final Trail start;
  private final double lengthMm;
  private final double radiusMm;
  private final double stubMm;
  private final Box inside;
  private final List<Trail> found = new ArrayList<>();

  private Shapes(Trail start, double lengthMm, double radiusMm, double stubMm, Box inside) {
    this.start = start;
    this.lengthMm = lengthMm;
    this.radiusMm = radiusMm;
    this.stubMm = stubMm;
    this.inside = inside;
  }

  /** The straight way, if it stays inside the box. */
  static List<Trail> straight(Point start, int headingDegrees, double lengthMm, Box inside) {
    Shapes shapes = new Shapes(Trail.at(start, headingDegrees), lengthMm, 0, 0, inside);
    shapes.keep(shapes.start, lengthMm);
    return shapes.found;
  }

  /**
   * All ways with bends that stay inside the box, fewest bends first.
   *
   * @param start where the piece starts
   * @param lengthMm how long it is
   * @param radiusMm radius of its bends
   * @param stubMm straight part at both of its ends
   * @param inside where the middle of the bundle may be
   * @param riseMm distance between rows to try first where a piece turns back
   */
  static List<Trail> bent(
      Point start,
      int headingDegrees,
      double lengthMm,
      double radiusMm,
      double stubMm,
      Box inside,
      double riseMm) {
    Shapes shapes = new Shapes(Trail.at(start, headingDegrees), lengthMm, radiusMm, stubMm, inside);
    shapes.slanted();
    shapes.bent();
    shapes.turnedBack(riseMm);
    shapes.folded();
    shapes.bentAndFolded();
    shapes.found.sort(Comparator.comparingInt(Trail::bends));
    return shapes.found;
  }

  private void slanted() {
    double spare = lengthMm - 2 * stubMm - Trail.turnMm(45, radiusMm);
    for (double share : new double[] {0, 0.5}) {
      if (spare >= 0) {
        for (int side : new int[] {1, -1}) {
          keep(start.on(stubMm + share * spare).turn(45 * side, radiusMm), lengthMm);
        }
      }
    }
  }

  private void bent() {
    for (double beforeMm : leads(Trail.turnMm(90, radiusMm))) {
      for (int side : new int[] {1, -1}) {
        keep(start.on(beforeMm).turn(90 * side, radiusMm), lengthMm);
      }
    }
  }

  private void turnedBack(double riseMm) {
    for (double rise : new double[] {riseMm - 2 * radiusMm, 0.5 * riseMm - 2 * radiusMm, 0}) {
      // A straight part shorter than the bend's radius gains nothing.
      if (rise != 0 && rise < radiusMm) {
        continue;
      }
      for (double beforeMm : leads(Trail.turnMm(180, radiusMm) + rise)) {
        for (int side : new int[] {1, -1}) {
          keep(
              start.on(beforeMm).turn(90 * side, radiusMm).on(rise).turn(90 * side, radiusMm),
              lengthMm);
        }
      }
    }
  }

  private void folded() {
    for (int side : new int[] {1, -1}) {
      fold(start, side);
    }
  }

  private void bentAndFolded() {
    double spare = lengthMm - stubMm - Trail.turnMm(90, radiusMm);
    for (double beforeMm : new double[] {stubMm, 2 * radiusMm + stubMm, 6 * radiusMm + stubMm}) {
      if (beforeMm + 4 * radiusMm < spare) {
        for (int side : new int[] {1, -1}) {
          fold(start.on(beforeMm).turn(90 * side, radiusMm), -side);
        }
      }
    }
  }

  /** Rows of equal length, one beside the other, going away to the given side. */
  private void fold(Trail base, int side) {
    double back = Trail.turnMm(180, radiusMm);
    for (int folds = 1; folds <= MOST_FOLDS; folds++) {
      double rowMm = (lengthMm - base.lengthMm() - folds * back) / (folds + 1);
      if (rowMm < stubMm) {
        return;
      }
      Trail trail = base;
      int turn = side;
      for (int i = 0; i < folds && isInside(trail.tip()); i++) {
        trail = trail.on(rowMm);
        if (isInside(trail.tip())) {
          trail = trail.turn(180 * turn, radiusMm);
        }
        turn = -turn;
      }
      if (isInside(trail.tip())) {
        keep(trail, lengthMm);
      }
    }
  }

  /** Lengths before a first bend, the longest that the board allows first. */
  private List<Double> leads(double bendsMm) {
    double mostMm = Math.min(lengthMm - bendsMm - stubMm, roomMm() - radiusMm);
    List<Double> leads = new ArrayList<>();
    if (mostMm < stubMm) {
      return leads;
    }
    for (double share : new double[] {1, 0.75, 0.5, 0.25, 0}) {
      double lead = stubMm + share * (mostMm - stubMm);
      if (leads.isEmpty() || leads.get(leads.size() - 1) - lead > 5) {
        leads.add(lead);
      }
    }
    return leads;
  }

  /** Room straight ahead, mm. */
  private double roomMm() {
    double dx = Trail.dx(start.headingDegrees());
    double dy = Trail.dy(start.headingDegrees());
    Point at = start.tip();
    double room = Double.POSITIVE_INFINITY;
    if (Math.abs(dx) > 1e-9) {
      room = Math.min(room, ((dx > 0 ? inside.rightMm() : inside.xMm()) - at.xMm()) / dx);
    }
    if (Math.abs(dy) > 1e-9) {
      room = Math.min(room, ((dy > 0 ? inside.bottomMm() : inside.yMm()) - at.yMm()) / dy);
    }
    return room;
  }

  private void keep(Trail trail, double totalMm) {
    double restMm = totalMm - trail.lengthMm();
    if (trail.bends() > 0 && restMm < stubMm - 1e-9) {
      return;
    }
    Trail whole = trail.on(restMm);
    if (whole.points().stream().allMatch(this::isInside)) {
      found.add(whole);
    }
  }

  private boolean isInside(Point point) {
    return point.xMm() >= inside.xMm()
        && point.yMm() >= inside.yMm()
        && point.xMm() <= inside.rightMm()
        && point.yMm() <= inside.bottomMm();
  }
}
