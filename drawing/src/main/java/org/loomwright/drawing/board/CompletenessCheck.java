package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.Node;

/** Checks that a plan holds the whole tree, put together the right way. */
final class CompletenessCheck {
  private static final double EXACT_MM = 1e-6;

  private final BoardTree tree;
  private final BoardPlan plan;
  private final List<String> faults = new ArrayList<>();

  private CompletenessCheck(BoardTree tree, BoardPlan plan) {
    this.tree = tree;
    this.plan = plan;
  }

  static List<String> check(BoardTree tree, BoardPlan plan) {
    CompletenessCheck check = new CompletenessCheck(tree, plan);
    check.whole();
    check.seams();
    return check.faults;
  }

  private void fault(Sheet sheet, String text, Object... values) {
    faults.add("sheet " + sheet.number() + ": " + String.format(Locale.ROOT, text, values));
  }

  /** Each branch is there from end to end, each node once, with the right size. */
  private void whole() {
    Map<String, TreeMap<Double, Double>> covered = new LinkedHashMap<>();
    Map<String, Integer> nodes = new LinkedHashMap<>();
    for (Sheet sheet : plan.sheets()) {
      for (Line line : sheet.lines()) {
        covered
            .computeIfAbsent(line.branch(), any -> new TreeMap<>())
            .put(line.fromMm(), line.toMm());
      }
      sheet.joints().forEach(joint -> nodes.merge(joint.name(), 1, Integer::sum));
      sheet.ends().forEach(end -> nodes.merge(end.name(), 1, Integer::sum));
      for (LaidEnd end : sheet.ends()) {
        tree.node(end.name())
            .filter(End.class::isInstance)
            .map(End.class::cast)
            .filter(it -> !same(it, end))
            .ifPresent(it -> fault(sheet, "end %s has not its true size", end.name()));
      }
    }
    for (Branch branch : tree.branches()) {
      double at = 0;
      for (Map.Entry<Double, Double> part :
          covered.getOrDefault(branch.name(), new TreeMap<>()).entrySet()) {
        at = part.getKey() == at ? part.getValue() : Double.NaN;
      }
      if (at != branch.lengthMm()) {
        faults.add("branch " + branch.name() + " is not laid from end to end");
      }
    }
    for (Node node : tree.nodes()) {
      int found = nodes.getOrDefault(node.name(), 0);
      if (found != 1) {
        faults.add("node " + node.name() + " is laid " + found + " times");
      }
    }
  }

  private static boolean same(End end, LaidEnd laid) {
    return laid.body().widthMm() == end.widthMm()
        && laid.body().heightMm() == end.heightMm()
        && laid.table().isPresent() == end.hasTable()
        && laid.table()
            .map(
                box -> box.widthMm() == end.tableWidthMm() && box.heightMm() == end.tableHeightMm())
            .orElse(true);
  }

  /** Lines that begin or end at a node do so where the node lies, or at a match line for it. */
  private void seams() {
    Map<String, List<Integer>> letters = new LinkedHashMap<>();
    for (Sheet sheet : plan.sheets()) {
      for (Match match : sheet.matches()) {
        letters.computeIfAbsent(match.letter(), any -> new ArrayList<>()).add(sheet.number());
      }
      for (Line line : sheet.lines()) {
        Point last = line.points().get(line.points().size() - 1);
        tip(sheet, line, line.points().get(0), line.start(), line.fromMm());
        tip(sheet, line, last, line.end(), line.toMm());
      }
    }
    letters.forEach(
        (letter, sheets) -> {
          if (sheets.size() != 2) {
            faults.add("match line " + letter + " has " + sheets.size() + " sides");
          }
        });
  }

  private void tip(Sheet sheet, Line line, Point at, Optional<String> node, double atMm) {
    if (node.isPresent()) {
      boolean isThere =
          sheet.joints().stream()
                  .anyMatch(it -> it.name().equals(node.get()) && length(it.at(), at) < EXACT_MM)
              || sheet.ends().stream()
                  .anyMatch(it -> it.name().equals(node.get()) && length(it.at(), at) < EXACT_MM);
      Branch branch = tree.branch(line.branch()).orElseThrow();
      String wanted = atMm == 0 ? branch.from() : branch.to();
      if (!isThere || !node.get().equals(wanted)) {
        fault(sheet, "branch %s does not reach %s", line.branch(), wanted);
      }
    } else if (sheet.matches().stream()
        .noneMatch(
            it ->
                it.branch().equals(line.branch())
                    && it.atMm() == atMm
                    && length(it.at(), at) < EXACT_MM)) {
      fault(sheet, "branch %s stops without a match line", line.branch());
    }
  }

  private static double length(Point a, Point b) {
    return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
  }
}
