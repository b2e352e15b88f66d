package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/**
 * Checks a plan against its tree, with sums of its own and by looking at each pair of things.
 *
 * <p>Branches keep the clearance between their surfaces everywhere, but for where they meet: of two
 * branches on one sheet, the first stretch from where they are nearest along the harness is left
 * out, as long as twice the distance that their middles must keep, less the way between them. In
 * that stretch too their middles must not touch but at the junction they share, and their surfaces
 * must not overlap but right at it: not where the way between two places along the harness is more
 * than three times the distance of two middles that touch. Pegs stand clear of everything.
 */
public final class BoardChecker {
  private static final double EXACT_MM = 1e-6;

  private final BoardPlan plan;
  private final List<String> faults = new ArrayList<>();

  private BoardChecker(BoardPlan plan) {
    this.plan = plan;
  }

  /** All that is wrong with the plan, in words; empty when it is right. */
  public static List<String> check(BoardTree tree, BoardPlan plan) {
    BoardChecker checker = new BoardChecker(plan);
    for (Sheet sheet : plan.sheets()) {
      checker.lines(sheet);
      checker.ends(sheet);
      checker.pairs(sheet);
      checker.pegs(sheet);
    }
    checker.faults.addAll(CompletenessCheck.check(tree, plan));
    return List.copyOf(checker.faults);
  }

  private void fault(Sheet sheet, String text, Object... values) {
    faults.add("sheet " + sheet.number() + ": " + String.format(Locale.ROOT, text, values));
  }

  private void lines(Sheet sheet) {
    Board board = plan.board();
    for (Line line : sheet.lines()) {
      double sum = 0;
      for (int i = 1; i < line.points().size(); i++) {
        sum += length(line.points().get(i - 1), line.points().get(i));
      }
      if (!(Math.abs(sum - (line.toMm() - line.fromMm())) <= EXACT_MM)) {
        fault(
            sheet,
            "branch %s is %.6f mm long on the board and %.6f mm in truth",
            line.branch(),
            sum,
            line.toMm() - line.fromMm());
      }
      double edge = board.marginMm() + line.diameterMm() / 2 - EXACT_MM;
      for (Point point : line.points()) {
        boolean inside =
            point.xMm() >= edge
                && point.yMm() >= edge
                && point.xMm() <= board.widthMm() - edge
                && point.yMm() <= board.heightMm() - edge;
        if (!inside) {
          fault(
              sheet,
              "branch %s leaves the board at %.1f, %.1f",
              line.branch(),
              point.xMm(),
              point.yMm());
        }
      }
      bends(sheet, line);
    }
  }

  /** Radius of the circle through a corner's neighbours, from the shorter chord and the turn. */
  private void bends(Sheet sheet, Line line) {
    double least = plan.board().bendRatio() * line.diameterMm();
    List<Point> points = line.points();
    for (int i = 1; i + 1 < points.size(); i++) {
      double in = length(points.get(i - 1), points.get(i));
      double out = length(points.get(i), points.get(i + 1));
      double straight = length(points.get(i - 1), points.get(i + 1));
      double cosine = (in * in + out * out - straight * straight) / (2 * in * out);
      double turn = Math.PI - Math.acos(Math.max(-1, Math.min(1, cosine)));
      double radius = Math.min(in, out) / (2 * Math.sin(turn / 2));
      if (turn > 1e-4 && !(radius >= least * (1 - 1e-6))) {
        fault(
            sheet,
            "branch %s bends with a radius of %.1f mm at %.1f, %.1f; at least %.1f mm is wanted",
            line.branch(),
            radius,
            points.get(i).xMm(),
            points.get(i).yMm(),
            least);
      }
    }
  }

  /** A box with what it belongs to. */
  private record Body(String owner, String branch, Box box, boolean isTable) {}

  private static List<Body> bodies(Sheet sheet) {
    List<Body> bodies = new ArrayList<>();
    for (LaidEnd end : sheet.ends()) {
      bodies.add(new Body("end " + end.name(), end.branch(), end.body(), false));
      end.table()
          .ifPresent(box -> bodies.add(new Body("end " + end.name(), end.branch(), box, true)));
    }
    for (Match match : sheet.matches()) {
      match
          .body()
          .ifPresent(
              box ->
                  bodies.add(new Body("match line " + match.letter(), match.branch(), box, false)));
    }
    return bodies;
  }

  private void ends(Sheet sheet) {
    Board board = plan.board();
    double clearance = board.clearanceMm() - EXACT_MM;
    List<Body> bodies = bodies(sheet);
    for (int i = 0; i < bodies.size(); i++) {
      Body body = bodies.get(i);
      Box box = body.box();
      double edge = board.marginMm() - EXACT_MM;
      if (!(box.xMm() >= edge
          && box.yMm() >= edge
          && box.xMm() + box.widthMm() <= board.widthMm() - edge
          && box.yMm() + box.heightMm() <= board.heightMm() - edge)) {
        fault(sheet, "%s leaves the board", body.owner());
      }
      for (Body other : bodies.subList(i + 1, bodies.size())) {
        double wanted = body.owner().equals(other.owner()) ? 0 : clearance;
        if (gap(box, other.box()) < wanted || overlap(box, other.box())) {
          fault(sheet, "%s and %s are too near", body.owner(), other.owner());
        }
      }
      for (Line line : sheet.lines()) {
        boolean isOwn = line.branch().equals(body.branch()) && touches(line, sheet, body);
        double wanted = isOwn ? 0 : clearance + line.diameterMm() / 2;
        for (int k = 1; k < line.points().size(); k++) {
          double apart = distance(line.points().get(k - 1), line.points().get(k), box);
          boolean enters =
              distance(
                      line.points().get(k - 1),
                      line.points().get(k),
                      new Box(
                          box.xMm() + EXACT_MM,
                          box.yMm() + EXACT_MM,
                          box.widthMm() - 2 * EXACT_MM,
                          box.heightMm() - 2 * EXACT_MM))
                  == 0;
          if (apart < wanted || enters) {
            fault(sheet, "branch %s runs too near to %s", line.branch(), body.owner());
            break;
          }
        }
      }
    }
  }

  /** Whether a line is the one that ends at the box's owner. */
  private static boolean touches(Line line, Sheet sheet, Body body) {
    List<Point> tips = new ArrayList<>();
    sheet.ends().stream()
        .filter(end -> body.owner().equals("end " + end.name()))
        .forEach(end -> tips.add(end.at()));
    sheet.matches().stream()
        .filter(match -> body.owner().equals("match line " + match.letter()))
        .forEach(match -> tips.add(match.at()));
    Point first = line.points().get(0);
    Point last = line.points().get(line.points().size() - 1);
    return tips.stream()
        .anyMatch(tip -> length(tip, first) < EXACT_MM || length(tip, last) < EXACT_MM);
  }

  private void pairs(Sheet sheet) {
    List<Line> lines = sheet.lines();
    SheetGraph graph = new SheetGraph(lines);
    for (int i = 0; i < lines.size(); i++) {
      Line one = lines.get(i);
      folds(sheet, one);
      for (int k = i + 1; k < lines.size(); k++) {
        pair(sheet, graph, i, k);
      }
    }
  }

  private void pair(Sheet sheet, SheetGraph graph, int first, int second) {
    Line one = sheet.lines().get(first);
    Line other = sheet.lines().get(second);
    double wanted = plan.board().clearanceMm() + (one.diameterMm() + other.diameterMm()) / 2;
    SheetGraph.Nearest nearest = graph.nearest(first, second);
    double left = 2 * wanted - nearest.alongMm();
    double oneMm = 0;
    for (int a = 1; a < one.points().size(); a++) {
      Segment s = new Segment(one, a, oneMm, nearest.isFirstOfOne());
      oneMm += s.lengthMm();
      double otherMm = 0;
      for (int b = 1; b < other.points().size(); b++) {
        Segment t = new Segment(other, b, otherMm, nearest.isFirstOfOther());
        otherMm += t.lengthMm();
        if (s.isFarFrom(t, wanted)) {
          continue;
        }
        boolean meet = nearest.alongMm() == 0 && s.isAtStart() && t.isAtStart();
        if (meet ? s.headsLike(t) : s.distanceMm(t) < EXACT_MM) {
          fault(sheet, "branches %s and %s cross", one.branch(), other.branch());
          return;
        }
        if (overlap(s, t, nearest.alongMm(), (one.diameterMm() + other.diameterMm()) / 2)) {
          fault(
              sheet,
              "branches %s and %s overlap beside the junction",
              one.branch(),
              other.branch());
          return;
        }
        if (tooNear(s.beyond(left), Optional.of(t), wanted)
            || tooNear(t.beyond(left), Optional.of(s), wanted)) {
          fault(
              sheet,
              "branches %s and %s come nearer than %.1f mm",
              one.branch(),
              other.branch(),
              plan.board().clearanceMm());
          return;
        }
      }
    }
  }

  /** Looks at places a millimetre apart on both stretches. */
  private static boolean overlap(Segment s, Segment t, double alongMm, double touchMm) {
    if (Double.isInfinite(alongMm) || s.isFarFrom(t, touchMm)) {
      return false;
    }
    int steps = (int) Math.ceil(s.lengthMm());
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      Point place =
          new Point(
              s.a().xMm() + share * (s.b().xMm() - s.a().xMm()),
              s.a().yMm() + share * (s.b().yMm() - s.a().yMm()));
      double fromJunction =
          s.fromMm() + (s.isBackward() ? 1 - share : share) * s.lengthMm() + alongMm;
      Optional<Segment> rest = t.beyond(3 * touchMm - fromJunction);
      if (rest.isPresent()
          && rest.get().distanceMm(new Segment(place, place, 0, false)) < touchMm - 0.01) {
        return true;
      }
    }
    return false;
  }

  private void pegs(Sheet sheet) {
    List<Body> bodies = bodies(sheet);
    List<BoardPlan.Peg> pegs = sheet.pegs();
    for (int i = 0; i < pegs.size(); i++) {
      BoardPlan.Peg peg = pegs.get(i);
      // A tenth is for bends, which are chords.
      double radius = peg.diameterMm() / 2 - 0.1 - EXACT_MM;
      boolean isInLine =
          sheet.lines().stream()
              .anyMatch(
                  line -> {
                    boolean isIn = false;
                    for (int k = 1; k < line.points().size(); k++) {
                      Segment part =
                          new Segment(line.points().get(k - 1), line.points().get(k), 0, false);
                      Segment at = new Segment(peg.at(), peg.at(), 0, false);
                      isIn |= part.distanceMm(at) < radius + line.diameterMm() / 2;
                    }
                    return isIn;
                  });
      boolean isInBody =
          bodies.stream().anyMatch(it -> distance(peg.at(), peg.at(), it.box()) < radius);
      boolean isInPeg =
          pegs.subList(i + 1, pegs.size()).stream()
              .anyMatch(it -> length(it.at(), peg.at()) < 2 * radius);
      if (isInLine || isInBody || isInPeg) {
        fault(
            sheet,
            "a peg of %s stands in something at %.1f, %.1f",
            peg.holds(),
            peg.at().xMm(),
            peg.at().yMm());
      }
    }
  }

  private static boolean tooNear(Optional<Segment> one, Optional<Segment> other, double wanted) {
    return one.isPresent()
        && other.isPresent()
        && one.get().distanceMm(other.get()) < wanted - EXACT_MM;
  }

  /**
   * A line's own folds: what is farther apart along the line than a bend's width is apart on the
   * board too.
   */
  private void folds(Sheet sheet, Line line) {
    double wanted = plan.board().clearanceMm() + line.diameterMm();
    List<Point> points = line.points();
    for (int a = 1; a < points.size(); a++) {
      Segment s = new Segment(points.get(a - 1), points.get(a), 0, true);
      double between = 0;
      for (int b = a + 1; b < points.size(); b++) {
        Segment t = new Segment(points.get(b - 1), points.get(b), 0, false);
        double left = 1.65 * wanted - between;
        if (!s.isFarFrom(t, wanted)
            && (tooNear(s.beyond(left), Optional.of(t), wanted)
                || tooNear(Optional.of(s), t.beyond(left), wanted))) {
          fault(sheet, "branch %s runs into itself", line.branch());
          return;
        }
        between += t.lengthMm();
      }
    }
  }

  private static double length(Point a, Point b) {
    return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
  }

  private static double gap(Box a, Box b) {
    double dx = Math.max(a.xMm() - b.xMm() - b.widthMm(), b.xMm() - a.xMm() - a.widthMm());
    double dy = Math.max(a.yMm() - b.yMm() - b.heightMm(), b.yMm() - a.yMm() - a.heightMm());
    return Math.hypot(Math.max(0, dx), Math.max(0, dy));
  }

  private static boolean overlap(Box a, Box b) {
    return Math.min(a.xMm() + a.widthMm(), b.xMm() + b.widthMm()) - Math.max(a.xMm(), b.xMm())
            > EXACT_MM
        && Math.min(a.yMm() + a.heightMm(), b.yMm() + b.heightMm()) - Math.max(a.yMm(), b.yMm())
            > EXACT_MM;
  }

  private static double distance(Point a, Point b, Box box) {
    return Segment.toBoxMm(a, b, box);
  }
}
