package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.board.BoardTree.Mark;
import org.loomwright.drawing.board.BoardTree.MarkKind;
import org.loomwright.drawing.board.kit.HarnessGraph.Edge;
import org.loomwright.drawing.board.kit.HarnessGraph.Stretch;

/**
 * Labels and tape on a branch. A lead's label lies from 25 mm to 50 mm behind its terminal, so that
 * it reads when the connector is mated; tape holds each leg of a breakout, and the end of a
 * covering. All common practice.
 */
final class BranchMarks {
  private static final double LABEL_FROM_MM = 25;
  private static final double LABEL_TO_MM = 50;
  private static final double TAPE_MM = 12;

  private final String branch;
  private final double lengthMm;
  private final List<Mark> marks = new ArrayList<>();

  private BranchMarks(String branch, double lengthMm) {
    this.branch = branch;
    this.lengthMm = lengthMm;
  }

  /**
   * The marks of a branch.
   *
   * @param fromLabels labels of leads that end at its first node
   * @param toLabels labels of leads that end at its last node
   * @param fromBreakout whether branches meet at its first node
   * @param toBreakout whether branches meet at its last node
   */
  static List<Mark> of(
      String branch,
      Edge edge,
      List<String> fromLabels,
      List<String> toLabels,
      boolean fromBreakout,
      boolean toBreakout) {
    BranchMarks made = new BranchMarks(branch, edge.lengthMm());
    made.labels(fromLabels, true);
    made.labels(toLabels, false);
    double outMm = edge.diameterMm() + 6;
    if (fromBreakout) {
      made.tape(outMm, true);
    }
    if (toBreakout) {
      made.tape(outMm, false);
    }
    double soFar = 0;
    for (int i = 1; i < edge.stretches().size(); i++) {
      Stretch before = edge.stretches().get(i - 1);
      soFar += before.lengthMm();
      if (!before.covering().equals(edge.stretches().get(i).covering())) {
        made.tape(soFar - TAPE_MM / 2, true);
      }
    }
    return made.marks;
  }

  private void labels(List<String> labels, boolean isAtFrom) {
    if (labels.isEmpty()) {
      return;
    }
    // Short branches keep half of themselves for each end.
    double share = Math.min(1, lengthMm / 2 / (LABEL_TO_MM + 2));
    double middle = share * (LABEL_FROM_MM + LABEL_TO_MM) / 2;
    String text = labels.size() == 1 ? labels.get(0) : labels.size() + " lead labels";
    add(
        MarkKind.LABEL,
        isAtFrom ? middle : lengthMm - middle,
        share * (LABEL_TO_MM - LABEL_FROM_MM),
        text);
  }

  private void tape(double fromMm, boolean isFromStart) {
    double middle = fromMm + TAPE_MM / 2;
    add(MarkKind.TAPE, isFromStart ? middle : lengthMm - middle, TAPE_MM, "");
  }

  /** Adds a mark where it has room on the branch beside those there. */
  private void add(MarkKind kind, double atMm, double longMm, String text) {
    boolean isOn = atMm - longMm / 2 >= 0 && atMm + longMm / 2 <= lengthMm;
    boolean isFree =
        marks.stream().noneMatch(it -> Math.abs(it.atMm() - atMm) < (it.lengthMm() + longMm) / 2);
    if (isOn && isFree) {
      marks.add(new Mark(kind, branch, atMm, longMm, text));
    }
  }
}
