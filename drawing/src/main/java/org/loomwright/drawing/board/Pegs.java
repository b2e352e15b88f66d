package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.board.BoardPlan.Breakout;
import org.loomwright.drawing.board.BoardPlan.Joint;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Peg;
import org.loomwright.drawing.board.BoardPlan.PegUse;

/**
 * Where pegs stand so that the bundles keep their places: in each corner of a junction, inside each
 * bend, and to both sides of a branch before its end. They touch the bundle and do not stand in it.
 */
final class Pegs {
  /** Diameter of a peg, mm. */
  static final double DIAMETER_MM = 4;

  /** How far before an end its pegs stand, mm. */
  private static final double BEFORE_END_MM = 12;

  /** Between the turn at the ends of a bend and that at its other corners, degrees. */
  private static final double HALF_TURN_DEGREES = 5;

  private static final double TOUCH_MM = 0.1;

  private Pegs() {}

  static List<Peg> of(
      List<Line> lines, List<Joint> joints, List<LaidEnd> ends, List<BoardPlan.Match> matches) {
    List<Box> boxes = new ArrayList<>();
    for (LaidEnd end : ends) {
      boxes.add(end.body());
      end.table().ifPresent(boxes::add);
    }
    matches.forEach(match -> match.body().ifPresent(boxes::add));
    List<Peg> clear = new ArrayList<>();
    for (Peg peg : wanted(lines, joints, ends)) {
      if (isClear(peg, lines, boxes, clear)) {
        clear.add(peg);
      }
    }
    return clear;
  }

  /** Whether a peg finds room: near a crowded junction not all do. */
  private static boolean isClear(Peg peg, List<Line> lines, List<Box> boxes, List<Peg> others) {
    double radius = peg.diameterMm() / 2;
    List<Point> at = List.of(peg.at(), peg.at());
    for (Line line : lines) {
      // A peg touches the bundle that it holds, and inside a bend it touches chords of it.
      if (Lines.nearer(at, line.points(), radius + line.diameterMm() / 2 - TOUCH_MM)) {
        return false;
      }
    }
    Box around = Lines.around(at);
    return boxes.stream().noneMatch(box -> Lines.nearer(at, around, box, radius))
        && others.stream().noneMatch(it -> it.at().distanceMm(peg.at()) < peg.diameterMm());
  }

  private static List<Peg> wanted(List<Line> lines, List<Joint> joints, List<LaidEnd> ends) {
    List<Peg> pegs = new ArrayList<>();
    for (Joint joint : joints) {
      junction(pegs, joint, lines);
    }
    for (Line line : lines) {
      bends(pegs, line);
    }
    for (LaidEnd end : ends) {
      for (Line line : lines) {
        if (line.branch().equals(end.branch())) {
          end(pegs, end, line);
        }
      }
    }
    return pegs;
  }

  private static void junction(List<Peg> pegs, Joint joint, List<Line> lines) {
    List<Breakout> round = new ArrayList<>(joint.breakouts());
    round.sort((one, other) -> Integer.compare(one.headingDegrees(), other.headingDegrees()));
    for (int i = 0; i < round.size() && round.size() > 1; i++) {
      Breakout here = round.get(i);
      Breakout next = round.get((i + 1) % round.size());
      int between = Math.floorMod(next.headingDegrees() - here.headingDegrees(), 360);
      if (between > 180) {
        continue;
      }
      double half = Math.toRadians(between / 2.0);
      double thick = Math.max(diameter(lines, here), diameter(lines, next));
      double away = (thick + DIAMETER_MM) / 2 / Math.sin(half);
      double angle = Math.toRadians(here.headingDegrees()) + half;
      pegs.add(
          new Peg(
              joint.at().plus(away * Math.cos(angle), away * Math.sin(angle)),
              DIAMETER_MM,
              PegUse.JUNCTION,
              joint.name()));
    }
  }

  private static double diameter(List<Line> lines, Breakout breakout) {
    return lines.stream()
        .filter(line -> line.branch().equals(breakout.branch()))
        .mapToDouble(Line::diameterMm)
        .max()
        .orElse(0);
  }

  /**
   * A peg inside the middle of each bend; one for each quarter where a line turns back. A bend
   * begins and ends with a corner of half a chord's turn.
   */
  private static void bends(List<Peg> pegs, Line line) {
    List<Point> points = line.points();
    double soFar = 0;
    double turned = 0;
    double startMm = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      soFar += points.get(i).distanceMm(points.get(i - 1));
      double turn = turnDegrees(points.get(i - 1), points.get(i), points.get(i + 1));
      boolean isFirst = turned == 0;
      if (isFirst) {
        startMm = soFar;
      }
      turned += turn;
      if (!isFirst && Math.abs(turn) < HALF_TURN_DEGREES) {
        bend(pegs, line, startMm, soFar, turned);
        turned = 0;
      }
    }
  }

  private static void bend(
      List<Peg> pegs, Line line, double startMm, double endMm, double turnedDegrees) {
    long count = Math.max(1, Math.round(Math.abs(turnedDegrees) / 90));
    double beside = Math.copySign((line.diameterMm() + DIAMETER_MM) / 2, turnedDegrees);
    for (int i = 0; i < count; i++) {
      double atMm = startMm + (i + 0.5) / count * (endMm - startMm);
      pegs.add(
          new Peg(
              Lines.place(line.points(), atMm).beside(beside),
              DIAMETER_MM,
              PegUse.BEND,
              line.branch()));
    }
  }

  /** Positive for a turn to the right as seen on paper. */
  static double turnDegrees(Point before, Point at, Point after) {
    double in = Math.atan2(at.yMm() - before.yMm(), at.xMm() - before.xMm());
    double out = Math.atan2(after.yMm() - at.yMm(), after.xMm() - at.xMm());
    return Math.toDegrees(Math.IEEEremainder(out - in, 2 * Math.PI));
  }

  private static void end(List<Peg> pegs, LaidEnd end, Line line) {
    List<Point> fromTip =
        line.points().get(0).equals(end.at()) ? line.points() : Lines.reversed(line.points());
    if (!fromTip.get(0).equals(end.at())) {
      return;
    }
    Lines.Place place =
        Lines.place(fromTip, Math.min(BEFORE_END_MM, Lines.lengthMm(line.points()) / 3));
    double beside = (line.diameterMm() + DIAMETER_MM) / 2;
    for (int side : new int[] {1, -1}) {
      pegs.add(new Peg(place.beside(side * beside), DIAMETER_MM, PegUse.END, end.name()));
    }
  }
}
