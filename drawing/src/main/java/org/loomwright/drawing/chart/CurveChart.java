package org.loomwright.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Figure;
import org.loomwright.drawing.ink.Labels;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * One quantity over another as lines: limits as dashed lines, the point asked about as a ring with
 * a cross. Every line carries its name; what finds no room stands under the chart. Same input, same
 * bytes.
 */
public final class CurveChart {
  /** Narrowest picture, mm. */
  public static final double LEAST_WIDTH_MM = 80;

  private static final double SIZE = 2.8;
  private static final double LEFT_MM = 13;
  private static final double RIGHT_MM = 5;
  private static final double TOP_MM = 6.5;
  private static final double UNDER_MM = 9.5;
  private static final double MARK_MM = 1.5;
  private static final double[] AWAY_MM = {2.4, 4, 6.5, 10, 14};
  private static final int PLACES = 24;

  private final CurvePlot plot;
  private final Box box;
  private final PlotAxis across;
  private final PlotAxis up;
  private final Sheet sheet;
  private final List<String> left = new ArrayList<>();

  private CurveChart(CurvePlot plot, double widthMm, Lettering lettering) {
    this.plot = plot;
    this.box =
        new Box(LEFT_MM, TOP_MM, widthMm - RIGHT_MM, TOP_MM + Math.max(46, 0.42 * widthMm));
    this.across = PlotAxis.of(plot, true, box.left(), box.right());
    this.up = PlotAxis.of(plot, false, box.bottom(), box.top());
    this.sheet = new Sheet(lettering);
  }

  /**
   * Draws a chart.
   *
   * @param widthMm width of the picture, 80 mm or more; some 90 mm read well on a phone
   * @param lettering how text is written
   * @throws IllegalArgumentException when the width is too small
   */
  public static String svg(CurvePlot plot, double widthMm, Lettering lettering) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "a chart of " + widthMm + " mm is too narrow; give " + LEAST_WIDTH_MM + " mm or more");
    }
    return new CurveChart(plot, widthMm, lettering).draw(widthMm);
  }

  private String draw(double widthMm) {
    grid();
    Labels labels = new Labels(box.grown(-0.6), sheet.texts());
    List<List<Segment>> curves = plot.curves().stream().map(it -> cut(it.points())).toList();
    curves.forEach(it -> labels.avoid(it, 30));
    List<Segment> limits = plot.limits().stream().map(this::limit).toList();
    labels.avoid(limits, 30);
    plot.here().ifPresent(it -> labels.keepOff(mark(spot(it.at()))));
    plot.dots().forEach(it -> labels.keepOff(dot(spot(it.at()))));

    for (int i = 0; i < curves.size(); i++) {
      boolean broken = plot.curves().get(i).broken();
      sheet.path("curve", curves.get(i), Sheet.INK, 0.6, broken ? "0.5 1.3" : "");
    }
    limits.forEach(it -> sheet.path("bound", List.of(it), Sheet.INK, 0.5, "2.4 1.2"));
    plot.dots()
        .forEach(
            it ->
                sheet.circle(
                    it.holds() ? "size-holds" : "size-fails",
                    spot(it.at()),
                    1,
                    it.holds() ? Sheet.INK : "#fff",
                    Sheet.INK,
                    0.4));
    plot.here().ifPresent(this::here);
    // The point asked about first: it is what the chart is for.
    plot.here()
        .ifPresent(it -> name(labels, it.name(), around(spot(it.at()), it.name(), AWAY_MM)));
    for (int i = 0; i < limits.size(); i++) {
      name(labels, plot.limits().get(i).name(), beside(limits.get(i), plot.limits().get(i).name()));
    }
    for (int i = 0; i < curves.size(); i++) {
      String words = plot.curves().get(i).name();
      boolean broken = plot.curves().get(i).broken();
      if (!words.isEmpty()) {
        if (place(labels, words, along(curves.get(i), words, i == 0)).isEmpty()) {
          left.add(words + (broken ? " (dotted line)" : " (full line)"));
        }
      }
    }
    for (CurvePlot.Dot it : plot.dots()) {
      // Sizes on sale are many; those without room beside them are told by their neighbours.
      if (!it.name().isEmpty()) {
        place(labels, it.name(), around(spot(it.at()), it.name(), AWAY_MM[0]));
      }
    }
    return sheet.svg(widthMm, under(widthMm), plot.title());
  }

  private double under(double widthMm) {
    double top = box.bottom() + UNDER_MM;
    List<String> lines =
        left.isEmpty()
            ? List.of()
            : Words.wrap("In the chart: " + String.join("; ", left) + ".", SIZE, widthMm - 2);
    sheet.lines(Hold.LEFT, 1, top, SIZE, lines);
    return top + Words.height(lines, SIZE);
  }

  private void grid() {
    sheet.rect("plot", box, "#fff", "none", 0);
    List<Segment> lines = new ArrayList<>();
    across
        .marks()
        .forEach(it -> lines.add(new Segment(at(across.at(it), box.top()), at(across.at(it), box.bottom()))));
    up.marks()
        .forEach(it -> lines.add(new Segment(at(box.left(), up.at(it)), at(box.right(), up.at(it)))));
    sheet.path("grid", lines, "#bbb", 0.15, "");
    sheet.rect("frame", box, "none", Sheet.INK, 0.3);
    sheet.text(Hold.LEFT, 0.5, TOP_MM - 3.4, SIZE, plot.up().words());
    Labels strip =
        new Labels(new Box(0, 0, box.right() + RIGHT_MM, box.bottom() + UNDER_MM), sheet.texts());
    for (double value : up.marks()) {
      figure(strip, Hold.RIGHT, box.left() - 1, up.at(value), value);
    }
    double y = box.bottom() + 2.6;
    for (double value : across.marks()) {
      figure(strip, Hold.MIDDLE, across.at(value), y, value);
    }
    sheet.text(
        Hold.MIDDLE, (box.left() + box.right()) / 2, y + Words.PITCH * SIZE, SIZE, plot.across().words());
  }

  private void figure(Labels strip, Hold hold, double x, double y, double value) {
    String words = Figure.of(value);
    if (strip.place(List.of(Sheet.room(hold, x, y, SIZE, words))).isPresent()) {
      sheet.text(hold, x, y, SIZE, words);
    }
  }

  private static Spot at(double x, double y) {
    return new Spot(x, y);
  }

  private Spot spot(CurvePlot.Point it) {
    return new Spot(across.at(it.x()), up.at(it.y()));
  }

  private List<Segment> cut(List<CurvePlot.Point> points) {
    return Segment.through(points.stream().map(this::spot).toList()).stream()
        .flatMap(it -> it.inside(box).stream())
        .toList();
  }

  private Segment limit(CurvePlot.Limit it) {
    return it.upright()
        ? new Segment(at(across.at(it.at()), box.bottom()), at(across.at(it.at()), box.top()))
        : new Segment(at(box.left(), up.at(it.at())), at(box.right(), up.at(it.at())));
  }

  private static Box mark(Spot at) {
    return new Box(at.x(), at.y(), at.x(), at.y()).grown(MARK_MM);
  }

  private static Box dot(Spot at) {
    return new Box(at.x(), at.y(), at.x(), at.y()).grown(1);
  }

  private void here(CurvePlot.Here it) {
    Spot at = spot(it.at());
    sheet.line("to-axis", at, at(at.x(), box.bottom()), Sheet.INK, 0.2, "0.8 0.8");
    sheet.line("to-axis", at, at(box.left(), at.y()), Sheet.INK, 0.2, "0.8 0.8");
    sheet.circle("here", at, MARK_MM, "#fff", Sheet.INK, 0.6);
    sheet.line("here", at(at.x() - MARK_MM, at.y()), at(at.x() + MARK_MM, at.y()), Sheet.INK, 0.4, "");
    sheet.line("here", at(at.x(), at.y() - MARK_MM), at(at.x(), at.y() + MARK_MM), Sheet.INK, 0.4, "");
  }

  private void name(Labels labels, String words, List<Box> wanted) {
    if (place(labels, words, wanted).isEmpty()) {
      left.add(words);
    }
  }

  private Optional<Box> place(Labels labels, String words, List<Box> wanted) {
    Optional<Box> room = labels.place(wanted);
    room.ifPresent(
        it -> {
          sheet.rect("plate", it, "#fff", "none", 0);
          sheet.text(Hold.LEFT, it.left(), (it.top() + it.bottom()) / 2, SIZE, words);
        });
    return room;
  }

  /** Places round a mark, the near ones first. */
  private static List<Box> around(Spot mark, String words, double... rings) {
    List<Box> wanted = new ArrayList<>();
    for (double away : rings) {
      for (double side : new double[] {-1, 1, 0}) {
        double y = mark.y() + side * (away + 0.6 * SIZE);
        wanted.add(Sheet.room(Hold.LEFT, mark.x() + (side == 0 ? away : 1), y, SIZE, words));
        wanted.add(Sheet.room(Hold.RIGHT, mark.x() - (side == 0 ? away : 1), y, SIZE, words));
        wanted.add(Sheet.room(Hold.MIDDLE, mark.x(), y, SIZE, words));
      }
    }
    return wanted;
  }

  /** Places on both sides of a limit. */
  private static List<Box> beside(Segment line, String words) {
    List<Box> wanted = new ArrayList<>();
    boolean upright = line.from().x() == line.to().x();
    for (int i = 0; i <= PLACES; i++) {
      double share = (i + 0.5) / (PLACES + 1);
      Spot on = between(line, upright ? 1 - share : share);
      if (upright) {
        wanted.add(Sheet.room(Hold.RIGHT, on.x() - 1, on.y(), SIZE, words));
        wanted.add(Sheet.room(Hold.LEFT, on.x() + 1, on.y(), SIZE, words));
      } else {
        wanted.add(Sheet.room(Hold.LEFT, on.x(), on.y() - 0.9 * SIZE, SIZE, words));
        wanted.add(Sheet.room(Hold.LEFT, on.x(), on.y() + 0.9 * SIZE, SIZE, words));
      }
    }
    return wanted;
  }

  /** Places beside a line, the middle first, all above it or all below. */
  private static List<Box> along(List<Segment> line, String words, boolean above) {
    List<Box> wanted = new ArrayList<>();
    for (int i = 1; i <= PLACES && !line.isEmpty(); i++) {
      double share = 0.5 + (i % 2 == 0 ? 1 : -1) * (i / 2) * (1.0 / PLACES);
      Spot on = between(line.get((int) Math.min(line.size() - 1, share * line.size())), 0.5);
      for (double off : new double[] {1.1, 2.5, 5}) {
        double y = on.y() + (above ? -off : off);
        wanted.add(Sheet.room(Hold.LEFT, on.x() + off, y, SIZE, words));
        wanted.add(Sheet.room(Hold.RIGHT, on.x() - off, y, SIZE, words));
      }
    }
    return wanted;
  }

  private static Spot between(Segment line, double share) {
    return new Spot(
        line.from().x() + share * (line.to().x() - line.from().x()),
        line.from().y() + share * (line.to().y() - line.from().y()));
  }
}
