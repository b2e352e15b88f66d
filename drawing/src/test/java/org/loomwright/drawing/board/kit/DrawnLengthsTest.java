package org.loomwright.drawing.board.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardDxf;
import org.loomwright.drawing.board.BoardPlan;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.Point;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Tail;

/**
 * Lengths as a person with a rule finds them: along the drawn lines from the pegs at one end to the
 * pegs at the other, read from the files alone.
 */
class DrawnLengthsTest {
  /** Pegs of an end stand so far before it. */
  private static final double BEFORE_END_MM = 12;

  private static final Pattern BUNDLE =
      Pattern.compile("<polyline class=\"bundle\" points=\"([^\"]+)\"");
  private static final Pattern PEG =
      Pattern.compile("<circle class=\"peg\" cx=\"([-0-9.]+)\" cy=\"([-0-9.]+)\"");

  /** What a file shows: lines along the bundles and the middles of pegs. */
  private record Seen(List<List<Point>> lines, List<Point> pegs) {}

  @Test
  void pegsAreAsFarApartAlongTheTreeAsTheListOfLeadsSays() {
    int measured = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Drawn drawn = Harnesses.random(seed, 6);
      for (HarnessBoard board : HarnessBoard.of(drawn.plan(), drawn.order())) {
        if (board.plan().sheets().size() > 1) {
          continue;
        }
        BoardPlan.Sheet sheet = board.plan().sheets().get(0);
        Seen svg = svg(BoardSvg.document(board.plan(), sheet, board.words()));
        Seen dxf =
            dxf(BoardDxf.of(board.plan(), sheet, board.words()), board.plan().board().heightMm());
        for (Lead lead : drawn.plan().design().leads()) {
          Optional<Point> one = tip(drawn, board, sheet, lead, true);
          Optional<Point> other = tip(drawn, board, sheet, lead, false);
          if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
            continue;
          }
          for (Seen seen : List.of(svg, dxf)) {
            double mm = betweenPegsMm(seen, one.get(), other.get());
            assertThat(mm + 2 * BEFORE_END_MM)
                .as("seed %d lead %s", seed, lead.id())
                .isCloseTo(lead.lengthMm(), within(1.0));
            measured++;
          }
        }
      }
    }
    assertThat(measured).isGreaterThan(150);
  }

  private static Optional<Point> tip(
      Drawn drawn, HarnessBoard board, BoardPlan.Sheet sheet, Lead lead, boolean isSideA) {
    return drawn.plan().harness().tails().stream()
        .filter(tail -> tail.ends().contains(new Tail.End(lead.id(), isSideA)))
        .findFirst()
        .flatMap(
            tail ->
                sheet.ends().stream()
                    .filter(end -> end.name().equals(board.tails().get(tail.id())))
                    .findFirst())
        .map(BoardPlan.LaidEnd::at);
  }

  private static double betweenPegsMm(Seen seen, Point one, Point other) {
    List<Point> knots = new ArrayList<>();
    Map<Integer, Map<Integer, Double>> beside = new TreeMap<>();
    for (List<Point> line : seen.lines()) {
      for (int i = 1; i < line.size(); i++) {
        double mm = line.get(i - 1).distanceMm(line.get(i));
        int from = key(knots, line.get(i - 1));
        int to = key(knots, line.get(i));
        beside.computeIfAbsent(from, any -> new TreeMap<>()).put(to, mm);
        beside.computeIfAbsent(to, any -> new TreeMap<>()).put(from, mm);
      }
    }
    double whole = walk(beside, key(knots, one), -1, key(knots, other));
    return whole - beforeMm(seen, one) - beforeMm(seen, other);
  }

  private static double walk(
      Map<Integer, Map<Integer, Double>> beside, int at, int from, int goal) {
    if (at == goal) {
      return 0;
    }
    for (Map.Entry<Integer, Double> next : beside.getOrDefault(at, Map.of()).entrySet()) {
      if (next.getKey() != from) {
        double rest = walk(beside, next.getKey(), at, goal);
        if (!Double.isNaN(rest)) {
          return next.getValue() + rest;
        }
      }
    }
    return Double.NaN;
  }

  /** How far before the tip the nearest peg stands, along the line's last part. */
  private static double beforeMm(Seen seen, Point tip) {
    for (List<Point> line : seen.lines()) {
      List<Point> fromTip = new ArrayList<>(line);
      if (line.get(0).distanceMm(tip) > 0.02) {
        java.util.Collections.reverse(fromTip);
      }
      if (fromTip.get(0).distanceMm(tip) <= 0.02) {
        double dx = fromTip.get(1).xMm() - fromTip.get(0).xMm();
        double dy = fromTip.get(1).yMm() - fromTip.get(0).yMm();
        Point peg =
            seen.pegs().stream()
                .min(java.util.Comparator.comparingDouble(it -> it.distanceMm(tip)))
                .orElseThrow();
        return ((peg.xMm() - tip.xMm()) * dx + (peg.yMm() - tip.yMm()) * dy) / Math.hypot(dx, dy);
      }
    }
    return Double.NaN;
  }

  /** Points of two lines are one when they are written alike to a hundredth. */
  private static int key(List<Point> knots, Point point) {
    for (int i = 0; i < knots.size(); i++) {
      if (knots.get(i).distanceMm(point) < 0.02) {
        return i;
      }
    }
    knots.add(point);
    return knots.size() - 1;
  }

  private static Seen svg(String text) {
    List<List<Point>> lines = new ArrayList<>();
    for (Matcher it = BUNDLE.matcher(text); it.find(); ) {
      List<Point> points = new ArrayList<>();
      for (String pair : it.group(1).split(" ", -1)) {
        int comma = pair.indexOf(',');
        points.add(
            new Point(
                Double.parseDouble(pair.substring(0, comma)),
                Double.parseDouble(pair.substring(comma + 1))));
      }
      lines.add(points);
    }
    List<Point> pegs = new ArrayList<>();
    for (Matcher it = PEG.matcher(text); it.find(); ) {
      pegs.add(new Point(Double.parseDouble(it.group(1)), Double.parseDouble(it.group(2))));
    }
    return new Seen(lines, pegs);
  }

  private static Seen dxf(String text, double heightMm) {
    List<List<Point>> lines = new ArrayList<>();
    List<Point> pegs = new ArrayList<>();
    String[] rows = text.split("\r\n", -1);
    Map<Integer, String> groups = new TreeMap<>();
    for (int i = 0; i + 1 < rows.length; i += 2) {
      int code = Integer.parseInt(rows[i].trim());
      if (code == 0) {
        take(groups, heightMm, lines, pegs);
        groups.clear();
      }
      groups.put(code, rows[i + 1]);
    }
    return new Seen(lines, pegs);
  }

  private static void take(
      Map<Integer, String> groups, double heightMm, List<List<Point>> lines, List<Point> pegs) {
    String what = groups.getOrDefault(0, "") + " " + groups.getOrDefault(8, "");
    if (what.equals("LINE BRANCHES")) {
      lines.add(List.of(point(groups, 10, 20, heightMm), point(groups, 11, 21, heightMm)));
    } else if (what.equals("CIRCLE PEGS")) {
      pegs.add(point(groups, 10, 20, heightMm));
    }
  }

  private static Point point(Map<Integer, String> groups, int x, int y, double heightMm) {
    return new Point(
        Double.parseDouble(groups.getOrDefault(x, "")),
        heightMm - Double.parseDouble(groups.getOrDefault(y, "")));
  }
}
