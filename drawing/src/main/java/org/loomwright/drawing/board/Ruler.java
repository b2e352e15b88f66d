package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;

/** A ruler of 100 mm: a line with a tick each 5 mm, longer ones each 10 and 50 mm. */
final class Ruler {
  static final double LENGTH_MM = 100;

  /** Height of the longest ticks, mm. */
  static final double HEIGHT_MM = 5;

  private static final double TEXT_MM = 2.6;

  private Ruler() {}

  /** The ruler's line from its left end. */
  static List<Point> line(Point left) {
    return List.of(left, left.plus(LENGTH_MM, 0));
  }

  /** The ticks, upwards from the line. */
  static List<List<Point>> ticks(Point left) {
    List<List<Point>> ticks = new ArrayList<>();
    for (int mm = 0; mm <= LENGTH_MM; mm += 5) {
      double height = mm % 50 == 0 ? HEIGHT_MM : mm % 10 == 0 ? 3 : 1.8;
      ticks.add(List.of(left.plus(mm, 0), left.plus(mm, -height)));
    }
    return ticks;
  }

  /** Figures between the ticks' tops. */
  static List<Text> texts(Point left) {
    return List.of(
        new Text("ruler-text", "50", left.plus(47.5, -4.1), TEXT_MM, false),
        new Text("ruler-text", "100 mm", left.plus(94.2, -4.1), TEXT_MM, false));
  }

  /** The room it takes. */
  static Box box(Point left) {
    return new Box(left.xMm(), left.yMm() - HEIGHT_MM, LENGTH_MM, HEIGHT_MM).grown(0.5);
  }

  /** Draws line and ticks, without the figures. */
  static void draw(Ink ink, Point left) {
    ink.line("ruler", line(left), Ink.BLACK, 0.25, "");
    for (List<Point> tick : ticks(left)) {
      ink.line("tick", tick, Ink.BLACK, 0.25, "");
    }
  }
}
