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

  private Pegs() {}

  static List<Peg> of(List<Line> lines, List<Joint> joints, List<LaidEnd> ends) {
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

  /** One peg inside each bend, at its middle; where the line turns back one for each quarter. */
  private static void bends(List<Peg> pegs, Line line) {
    List<Point> points = line.points();
    double soFar = 0;
    double turned = 0;
    double startMm = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      soFar += points.get(i).distanceMm(points.get(i - 1));
      double turn = turnDegrees(points.get(i - 1), points.get(i), points.get(i + 1));
      if (Math.abs(turn) > 0.1 && turned == 0) {
        startMm = soFar;
      }
      turned += turn;
      boolean goesOn = Math.abs(turn) > 0.1;
      boolean isQuarter = Math.abs(turned) > 89.9;
      if (turned != 0 && (isQuarter || !goesOn || i + 2 == points.size())) {
        Lines.Place middle = Lines.place(points, (startMm + soFar) / 2);
        double beside = Math.copySign((line.diameterMm() + DIAMETER_MM) / 2, turned);
        pegs.add(new Peg(middle.beside(beside), DIAMETER_MM, PegUse.BEND, line.branch()));
        turned = 0;
      }
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
