package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Figure;
import org.loomwright.drawing.ink.Labels;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/** Names at the lines and marks of a protection chart. */
final class ChartLabels {
  private static final double SIZE = ChartFrame.SIZE;
  private static final double MARK_MM = 1.3;
  private static final double NEAR_MM = 0.9;
  private static final double[] RINGS_MM = {2.1, 4.5, 7, 10, 13, 17, 23};
  private static final int PLACES = 24;

  private final ChartFrame frame;
  private final Labels labels;
  private final double widestMm;
  private final List<Placed> placed = new ArrayList<>();
  private final List<Segment> leaders = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  private record Placed(Box box, List<String> lines) {}

  /**
   * A load in the chart.
   *
   * @param order which load it is; its shape goes by it
   */
  record Mark(int order, Spot at, String words) {
    void draw(Sheet sheet) {
      double r = MARK_MM;
      double x = at.x();
      double y = at.y();
      switch (order % 4) {
        case 0 -> sheet.circle("load", at, r, "#fff", Sheet.INK, 0.6);
        case 1 -> sheet.rect("load", new Box(x - r, y - r, x + r, y + r), "#fff", Sheet.INK, 0.6);
        case 2 ->
            sheet.polygon(
                "load",
                List.of(new Spot(x, y - r), new Spot(x + r, y + r), new Spot(x - r, y + r)),
                "#fff",
                Sheet.INK,
                0.6);
        default ->
            sheet.polygon(
                "load",
                List.of(
                    new Spot(x, y - r), new Spot(x + r, y), new Spot(x, y + r), new Spot(x - r, y)),
                "#fff",
                Sheet.INK,
                0.6);
      }
    }
  }

  ChartLabels(ChartFrame frame, List<Box> taken) {
    this.frame = frame;
    labels = new Labels(frame.box().grown(-0.8), taken);
    widestMm = Math.max(24, 0.32 * frame.box().width());
  }

  /** Loads as marks; one shorter than the chart shows stands at its lower edge. */
  static List<Mark> marks(List<ProtectionPlot.Load> loads, ChartFrame frame) {
    List<Mark> marks = new ArrayList<>();
    for (ProtectionPlot.Load it : loads) {
      Spot at = frame.spot(it.at());
      marks.add(
          new Mark(
              marks.size(),
              new Spot(at.x(), Math.min(at.y(), frame.box().bottom())),
              it.name()
                  + ": "
                  + Figure.of(it.at().currentA())
                  + " A for "
                  + duration(it.at().timeS())));
    }
    return marks;
  }

  /** A time in the unit it reads best in. */
  private static String duration(double timeS) {
    return timeS < 0.1
        ? Figure.of(1000 * timeS) + " ms"
        : timeS < 120
            ? Figure.of(timeS) + " s"
            : timeS < 7200 ? Figure.of(timeS / 60) + " min" : Figure.of(timeS / 3600) + " h";
  }

  /** Keeps names off a line; the hatching counts less than the line of a curve. */
  void avoid(List<Segment> line) {
    labels.avoid(line, 40);
  }

  void avoidHatching(List<Segment> hatching) {
    labels.avoid(hatching, 1.6);
  }

  void keepOff(Mark mark) {
    labels.keepOff(new Box(mark.at().x(), mark.at().y(), mark.at().x(), mark.at().y()).grown(1.2));
  }

  /** Names a load beside its mark, or farther off with a line to it. */
  void load(Mark mark) {
    Map<Box, List<String>> wanted = new LinkedHashMap<>();
    for (double away : RINGS_MM) {
      for (double widest :
          new double[] {widestMm, 1.3 * widestMm, 0.6 * widestMm, 0.42 * widestMm}) {
        around(mark.at(), away, Words.wrap(mark.words(), SIZE, widest), wanted);
      }
    }
    take(mark.words(), wanted)
        .map(box -> leader(mark.at(), box))
        .filter(it -> it.length() > 2.4)
        .ifPresent(leaders::add);
  }

  /** Places right, left, above and below a mark. */
  private void around(Spot mark, double away, List<String> lines, Map<Box, List<String>> wanted) {
    double width = Words.width(lines, SIZE);
    double height = Words.height(lines, SIZE);
    for (double side : new double[] {0, 1, -1}) {
      double top = mark.y() - height / 2 + side * (height / 2 + away);
      double off = side == 0 ? away : 0.6 * away;
      wanted.putIfAbsent(Box.at(mark.x() + off, top, width, height), lines);
      wanted.putIfAbsent(Box.at(mark.x() - off - width, top, width, height), lines);
      if (side != 0) {
        for (double share : new double[] {0.5, 0.75, 0.25}) {
          double left = Math.max(frame.box().left() + 0.9, mark.x() - share * width);
          double most = frame.box().right() - 0.9 - width;
          wanted.putIfAbsent(Box.at(Math.min(left, most), top, width, height), lines);
        }
      }
    }
  }

  /**
   * Names a line at one of many places along it.
   *
   * @param look how the line is drawn, for a name that finds no room
   * @param above whether the name belongs above the line; else below
   */
  void curve(String words, String look, List<Segment> line, boolean above) {
    if (line.isEmpty()) {
      return;
    }
    Map<Box, List<String>> wanted = new LinkedHashMap<>();
    for (double widest : new double[] {widestMm, 0.7 * widestMm}) {
      List<String> lines = Words.wrap(words, SIZE, widest);
      along(line).forEach(at -> beside(at, lines, above, wanted));
    }
    take(words + " (" + look + ")", wanted);
  }

  /** Right of a place on a falling line and above it, or left and below. */
  private static void beside(
      Spot at, List<String> lines, boolean above, Map<Box, List<String>> wanted) {
    double width = Words.width(lines, SIZE);
    double height = Words.height(lines, SIZE);
    double left = above ? at.x() + NEAR_MM : at.x() - NEAR_MM - width;
    double top = above ? at.y() - NEAR_MM - height : at.y() + NEAR_MM;
    wanted.putIfAbsent(Box.at(left, top, width, height), lines);
    wanted.putIfAbsent(Box.at(left, at.y() - height / 2, width, height), lines);
  }

  /** Places along a line, the middle first, then outwards to both ends. */
  private static List<Spot> along(List<Segment> line) {
    double whole = line.stream().mapToDouble(Segment::length).sum();
    List<Spot> places = new ArrayList<>();
    for (int i = 1; i <= PLACES; i++) {
      double share = 0.5 + (i % 2 == 0 ? 1 : -1) * (i / 2) * (1.0 / PLACES);
      places.add(at(line, share * whole));
    }
    return places;
  }

  private static Spot at(List<Segment> line, double wayMm) {
    double left = wayMm;
    for (Segment it : line) {
      double length = it.length();
      if (left <= length && length > 0) {
        double share = left / length;
        return new Spot(
            it.from().x() + share * (it.to().x() - it.from().x()),
            it.from().y() + share * (it.to().y() - it.from().y()));
      }
      left -= length;
    }
    return line.get(line.size() - 1).to();
  }

  private Optional<Box> take(String words, Map<Box, List<String>> wanted) {
    Optional<Box> box = labels.place(List.copyOf(wanted.keySet()));
    box.ifPresentOrElse(
        it -> placed.add(new Placed(it, Objects.requireNonNull(wanted.get(it)))),
        () -> left.add(words));
    return box;
  }

  private static Segment leader(Spot mark, Box box) {
    double x = Math.min(box.right(), Math.max(box.left(), mark.x()));
    double y = Math.min(box.bottom(), Math.max(box.top(), mark.y()));
    return new Segment(mark, new Spot(x, y));
  }

  /** White ground under the names, so that grid and hatching do not run through them. */
  void plates(Sheet sheet) {
    placed.forEach(it -> sheet.rect("plate", it.box().grown(0.3), "#fff", "none", 0));
  }

  void leaders(Sheet sheet) {
    sheet.path("leader", leaders, Sheet.INK, 0.25, "");
  }

  void write(Sheet sheet) {
    placed.forEach(it -> sheet.lines(Hold.LEFT, it.box().left(), it.box().top(), SIZE, it.lines()));
  }

  /** Names that found no room. */
  List<String> left() {
    return List.copyOf(left);
  }
}
