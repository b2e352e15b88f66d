package org.loomwright.papers.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardChecker;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.Harnesses;
import org.loomwright.drawing.board.kit.LeadLengthCheck;
import org.loomwright.drawing.ink.RenderedTexts;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.page.Fonts;
import org.loomwright.planner.plan.Planner;

/** The demo kits as they are planned today, on their boards. */
class DemoBoardTest {
  @Test
  void bothKitsHaveABoardThatAgreesWithTheirLeads() throws Exception {
    List<String> svgs = new ArrayList<>();
    for (String kit : List.of("trailer", "crew-comfort")) {
      KitOrder order = Harnesses.demo(kit);
      Plan plan = Planner.plan(order);
      List<HarnessBoard> boards = HarnessBoard.of(plan, order);
      assertThat(boards).isNotEmpty();
      for (HarnessBoard board : boards) {
        assertThat(BoardChecker.check(board.tree(), board.plan())).isEmpty();
        assertThat(board.spliceFaults()).isEmpty();
      }
      assertThat(LeadLengthCheck.check(plan, boards)).isEmpty();

      Map<String, byte[]> files = BoardFiles.of(plan, order, Fonts.load());
      assertThat(files.keySet())
          .contains("board.pdf", "board-sheet.pdf", "board-1.svg", "board-1.dxf");
      files.forEach(
          (name, bytes) -> {
            if (name.endsWith(".svg")) {
              svgs.add(new String(bytes, StandardCharsets.UTF_8));
            }
          });
    }
    RenderedTexts.of(svgs).areSound();
  }
}
