package org.loomwright.drawing.board;

import java.util.Locale;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.Node;

/** Refuses what can't lie on a board of the given size, however it is turned and cut. */
final class TooLarge {
  private TooLarge() {}

  static void check(BoardTree tree, Board board) {
    Box inside = board.inside();
    for (Node node : tree.nodes()) {
      if (node instanceof End end) {
        double gap = end.hasTable() ? Draft.TABLE_GAP_MM : 0;
        double besideMm = end.widthMm() + gap + end.tableWidthMm();
        double belowMm = end.heightMm() + gap + end.tableHeightMm();
        double widerMm = Math.max(end.widthMm(), end.tableWidthMm());
        double higherMm = Math.max(end.heightMm(), end.tableHeightMm());
        boolean fits =
            besideMm <= inside.widthMm() && higherMm <= inside.heightMm()
                || widerMm <= inside.widthMm() && belowMm <= inside.heightMm();
        if (!fits) {
          throw refused("end " + end.name() + " with its table", board);
        }
      }
    }
    for (Branch branch : tree.branches()) {
      if (branch.diameterMm() > Math.min(inside.widthMm(), inside.heightMm())) {
        throw refused("the bundle of branch " + branch.name(), board);
      }
    }
  }

  private static BoardTooSmall refused(String what, Board board) {
    return new BoardTooSmall(
        String.format(
            Locale.ROOT,
            "%s is larger than a board of %.0f mm x %.0f mm with a margin of %.0f mm;"
                + " take a larger board",
            what,
            board.widthMm(),
            board.heightMm(),
            board.marginMm()));
  }
}
