package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/** Finds room for texts, so that none lies on a branch, an end, a peg or another text. */
final class Texts {
  private static final double GAP_MM = 0.8;

  private final List<Line> lines;
  private final List<Box> boxes = new ArrayList<>();
  private final List<Text> placed = new ArrayList<>();
  private final Box paper;

  /** A text where it stands. */
  record Text(String name, String text, Point at, double sizeMm, boolean isUpward) {
    Box box() {
      double along = Ink.widthMm(text, sizeMm);
      double across = 0.85 * sizeMm;
      double width = isUpward ? across : along;
      double height = isUpward ? along : across;
      return new Box(at.xMm() - width / 2, at.yMm() - height / 2, width, height);
    }

    Text smaller() {
      return new Text(name, text, at, 0.75 * sizeMm, isUpward);
    }
  }

  Texts(Sheet sheet, Board board) {
    lines = sheet.lines();
    paper = new Box(0, 0, board.widthMm(), board.heightMm());
    for (LaidEnd end : sheet.ends()) {
      boxes.add(end.body());
      end.table().ifPresent(boxes::add);
    }
    sheet.pegs().forEach(peg -> boxes.add(square(peg.at(), peg.diameterMm() / 2)));
    sheet.matches().forEach(match -> match.body().ifPresent(boxes::add));
  }

  static Box square(Point at, double halfMm) {
    return new Box(at.xMm(), at.yMm(), 0, 0).grown(halfMm);
  }

  List<Text> placed() {
    return placed;
  }

  /** Keeps texts away from a place. */
  void keepFree(Box box) {
    boxes.add(box);
  }

  /** A text that stays where it is. */
  void fixed(Text text) {
    placed.add(text);
  }

  /** Beside a branch, along its straight parts, the longest first. */
  void along(String name, String text, Line line, double sizeMm) {
    List<Text> choices = new ArrayList<>();
    List<Point> points = line.points();
    List<Integer> order = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      order.add(i);
    }
    order.sort((one, other) -> Double.compare(length(points, other), length(points, one)));
    for (int i : order.subList(0, Math.min(5, order.size()))) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      boolean upward = Math.abs(b.yMm() - a.yMm()) > 1.5 * Math.abs(b.xMm() - a.xMm());
      boolean slanted = Math.min(Math.abs(b.yMm() - a.yMm()), Math.abs(b.xMm() - a.xMm())) > 1;
      double offMm = line.diameterMm() / 2 + 0.5 * sizeMm + 1.2;
      if (slanted) {
        offMm += 0.7 * Ink.widthMm(text, sizeMm) / 2;
      }
      for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        for (int side : new int[] {-1, 1}) {
          Lines.Place place = Lines.place(List.of(a, b), share * length(points, i));
          boolean flipped = place.headingDegrees() > 90 || place.headingDegrees() <= -90;
          Point at = place.beside(flipped ? -side * offMm : side * offMm);
          choices.add(new Text(name, text, at, sizeMm, upward));
        }
      }
    }
    best(choices);
  }

  /** Near a point, in the first free direction. */
  void near(String name, String text, Point at, double fromMm, double sizeMm) {
    List<Text> choices = new ArrayList<>();
    double half = Ink.widthMm(text, sizeMm) / 2;
    for (double away = fromMm; away < fromMm + 40; away += 3) {
      for (int turn : new int[] {315, 45, 225, 135, 270, 90, 0, 180}) {
        double dx = Trail.dx(turn);
        double dy = Trail.dy(turn);
        double side = Math.abs(dx) < 0.1 ? 0 : Math.copySign(half, dx);
        choices.add(
            new Text(
                name,
                text,
                at.plus(away * dx + side, away * dy + Math.signum(dy) * 0.3 * sizeMm),
                sizeMm,
                false));
      }
    }
    best(choices);
  }

  private void best(List<Text> choices) {
    for (Text choice : choices) {
      if (isFree(choice.box().grown(GAP_MM))) {
        placed.add(choice);
        return;
      }
    }
    for (Text choice : choices) {
      if (isFree(choice.smaller().box().grown(GAP_MM / 2))) {
        placed.add(choice.smaller());
        return;
      }
    }
    // No room: better a crowded text than none.
    placed.add(choices.get(0).smaller());
  }

  private boolean isFree(Box box) {
    if (!paper.holds(box)) {
      return false;
    }
    for (Box other : boxes) {
      if (other.isNearer(box, 1e-3)) {
        return false;
      }
    }
    for (Text text : placed) {
      if (text.box().isNearer(box, 1e-3)) {
        return false;
      }
    }
    for (Line line : lines) {
      Box around = Lines.around(line.points());
      if (Lines.nearer(line.points(), around, box, line.diameterMm() / 2 + 0.2)) {
        return false;
      }
    }
    return true;
  }

  private static double length(List<Point> points, int index) {
    return points.get(index).distanceMm(points.get(index - 1));
  }
}
