package org.loomwright.papers.board;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.drawing.board.BoardDxf;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.LeadLengthCheck;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.papers.page.Fonts;

/** The files of a kit's build board. */
public final class BoardFiles {
  private BoardFiles() {}

  /**
   * Makes all files: {@code board.pdf} on the paper of the rules, {@code board-sheet.pdf} with a
   * large page for each sheet, and for each sheet {@code board-1.svg} and {@code board-1.dxf},
   * numbered through.
   *
   * @return name to bytes, in that order; empty when the plan has no harness
   * @throws IOException when a font can't be used
   * @throws IllegalStateException when a lead is not as long on the board as in the list of leads
   * @throws org.loomwright.drawing.board.BoardTooSmall when something is larger than the board
   */
  public static Map<String, byte[]> of(Plan plan, KitOrder order, Fonts fonts) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<HarnessBoard> boards = HarnessBoard.of(plan, order);
    if (boards.isEmpty()) {
      return files;
    }
    LeadLengthCheck.require(plan, boards);
    files.put("board.pdf", BoardPdf.tiled(boards, RunDefaults.paper(order.rules()).value(), fonts));
    files.put("board-sheet.pdf", BoardPdf.whole(boards, fonts));
    int number = 0;
    for (HarnessBoard board : boards) {
      for (Sheet sheet : board.plan().sheets()) {
        number++;
        String svg = BoardSvg.document(board.plan(), sheet, board.words());
        String dxf = BoardDxf.of(board.plan(), sheet, board.words());
        files.put("board-" + number + ".svg", svg.getBytes(StandardCharsets.UTF_8));
        files.put("board-" + number + ".dxf", dxf.getBytes(StandardCharsets.US_ASCII));
      }
    }
    return files;
  }
}
