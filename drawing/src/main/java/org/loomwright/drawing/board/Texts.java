package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/**
 * Finds room for texts, so that none lies on a branch, an end, a peg or another text. A text that
 * finds none near its place goes farther away with a thin line to it, and smaller; what finds no
 * room on the whole sheet is left out and told by {@link #crowdedOut}.
 */
final class Texts {
  private static final double GAP_MM = 0.8;

  /** How far from its place a text may stand without a line to it, mm. */
  private static final double NEAR_MM = 10;

  private static final double[] SIZES = {1, 0.75, 0.6};
  private static final double FARTHEST_MM = 400;

  /** A shorter slanted part of a line is a part of a bend; no text goes along it. */
  private static final double SLANTED_MM = 30;

  private final List<Line> lines;
  private final List<Box> around;
  private final List<Box> boxes = new ArrayList<>();
  private final List<Text> placed = new ArrayList<>();
  private final List<List<Point>> leaders = new ArrayList<>();
  private final List<String> crowdedOut = new ArrayList<>();
  private final Box paper;

  Texts(Sheet sheet, Board board) {
    lines = sheet.lines();
    around = lines.stream().map(line -> Lines.around(line.points())).toList();
    paper = new Box(0, 0, board.widthMm(), board.heightMm()).grown(-1);
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

  /** Thin lines from texts to what they speak of. */
  List<List<Point>> leaders() {
    return leaders;
  }

  /** Texts without room. */
  List<String> crowdedOut() {
    return crowdedOut;
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
    List<Point> points = line.points();
    List<Integer> order = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      order.add(i);
    }
    order.sort((one, other) -> Double.compare(length(points, other), length(points, one)));
    for (double size : new double[] {sizeMm, 0.75 * sizeMm}) {
      for (int i : order.subList(0, Math.min(5, order.size()))) {
        for (Text choice : beside(name, text, line, i, size)) {
          if (isFree(choice.box().grown(GAP_MM))) {
            placed.add(choice);
            return;
          }
        }
      }
    }
    Point middle = Lines.place(points, Lines.lengthMm(points) / 2).at();
    near(name, text, middle, line.diameterMm() / 2 + 2, sizeMm);
  }

  private static List<Text> beside(String name, String text, Line line, int index, double sizeMm) {
    Point a = line.points().get(index - 1);
    Point b = line.points().get(index);
    boolean upward = Math.abs(b.yMm() - a.yMm()) > 1.5 * Math.abs(b.xMm() - a.xMm());
    boolean slanted = Math.min(Math.abs(b.yMm() - a.yMm()), Math.abs(b.xMm() - a.xMm())) > 1;
    if (slanted && length(line.points(), index) < SLANTED_MM) {
      return List.of();
    }
    double offMm = line.diameterMm() / 2 + 0.5 * sizeMm + 1.2;
    if (slanted) {
      offMm += 0.7 * Ink.widthMm(text, sizeMm) / 2;
    }
    List<Text> choices = new ArrayList<>();
    for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
      for (int side : new int[] {-1, 1}) {
        Lines.Place place = Lines.place(List.of(a, b), share * length(line.points(), index));
        boolean flipped = place.headingDegrees() > 90 || place.headingDegrees() <= -90;
        Point at = place.beside(flipped ? -side * offMm : side * offMm);
        choices.add(new Text(name, text, at, sizeMm, upward));
      }
    }
    return choices;
  }

  /** Near a point, in the first free direction, else farther away with a line to the point. */
  void near(String name, String text, Point at, double fromMm, double sizeMm) {
    for (double share : SIZES) {
      if (ring(new Text(name, text, at, share * sizeMm, false), fromMm, fromMm + NEAR_MM, 8)) {
        return;
      }
    }
    for (double share : SIZES) {
      Text wanted = new Text(name, text, at, share * sizeMm, false);
      if (ring(wanted, fromMm + NEAR_MM, fromMm + FARTHEST_MM, 16)) {
        return;
      }
    }
    crowdedOut.add(text);
  }

  private boolean ring(Text wanted, double fromMm, double toMm, int directions) {
    double half = wanted.widthMm() / 2;
    boolean isFar = directions > 8;
    for (double away = fromMm; away < toMm; away += isFar ? 5 : 3) {
      for (int i = 0; i < directions; i++) {
        // Slanted directions first, where branches are rare.
        int turn = Math.floorMod(315 + (i < 4 ? 90 * i : 90 * i + 360 / directions), 360);
        if (isFar) {
          turn = 360 * i / directions;
        }
        double dx = Math.cos(Math.toRadians(turn));
        double dy = Math.sin(Math.toRadians(turn));
        double side = Math.abs(dx) < 0.1 ? 0 : Math.copySign(half, dx);
        Text text =
            wanted.at(
                wanted
                    .at()
                    .plus(
                        away * dx + side,
                        away * dy
                            + (Math.abs(dy) < 0.1 ? 0 : Math.copySign(0.3, dy) * wanted.sizeMm())));
        if (!isFree(text.box().grown(GAP_MM))) {
          continue;
        }
        if (!isFar) {
          placed.add(text);
          return true;
        }
        Optional<List<Point>> leader = leader(wanted.at(), text.box());
        if (leader.isPresent()) {
          placed.add(text);
          leaders.add(leader.get());
          return true;
        }
      }
    }
    return false;
  }

  /** A line from a point to the nearest place of a text's box, clear of other texts. */
  private Optional<List<Point>> leader(Point from, Box box) {
    Point to =
        new Point(
            Math.max(box.xMm(), Math.min(box.rightMm(), from.xMm())),
            Math.max(box.yMm(), Math.min(box.bottomMm(), from.yMm())));
    List<Point> line = List.of(from, to);
    Box reach = Lines.around(line);
    boolean isClear = placed.stream().noneMatch(text -> Lines.nearer(line, reach, text.box(), 0.3));
    return isClear ? Optional.of(line) : Optional.empty();
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
    for (List<Point> leader : leaders) {
      if (Lines.nearer(leader, Lines.around(leader), box, 0.3)) {
        return false;
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (Lines.nearer(line.points(), around.get(i), box, line.diameterMm() / 2 + 0.2)) {
        return false;
      }
    }
    return true;
  }

  private static double length(List<Point> points, int index) {
    return points.get(index).distanceMm(points.get(index - 1));
  }
}
