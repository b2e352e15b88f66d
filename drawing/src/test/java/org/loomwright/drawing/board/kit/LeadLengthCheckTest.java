package org.loomwright.drawing.board.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.Point;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Tail;

/** Faults planted in boards and in plans. */
class LeadLengthCheckTest {
  private static final Drawn DRAWN = ByHand.oneLead();
  private static final List<HarnessBoard> BOARDS = HarnessBoard.of(DRAWN.plan(), DRAWN.order());

  @Test
  void seesATailThatIsLongerThanListed() {
    assertThatThrownBy(() -> HarnessBoard.of(longer(2), DRAWN.order()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(
            "build board: lead L1 is 1100.0 mm long in the list of leads and 1102.0 mm on the board");
  }

  @Test
  void letsPassWhatIsWithinAMillimetre() {
    assertThatCode(() -> HarnessBoard.of(longer(0.9), DRAWN.order())).doesNotThrowAnyException();
    assertThat(LeadLengthCheck.measure(longer(0.9), HarnessBoard.of(longer(0.9), DRAWN.order())))
        .singleElement()
        .satisfies(it -> assertThat(Math.abs(it.boardMm() - 1100.9)).isLessThan(1e-6));
  }

  /** The layout is measured, not the tree. */
  @Test
  void seesALineThatIsDrawnTooShort() {
    HarnessBoard board = BOARDS.get(0);
    Sheet sheet = board.plan().sheets().get(0);
    Line line = sheet.lines().get(0);
    List<Point> points = new ArrayList<>(line.points());
    points.set(0, points.get(0).plus(3, 0));
    HarnessBoard wrong =
        with(
            board,
            new Sheet(
                1,
                List.of(
                    new Line(
                        line.branch(),
                        line.start(),
                        line.end(),
                        line.fromMm(),
                        line.toMm(),
                        line.diameterMm(),
                        points)),
                sheet.joints(),
                sheet.ends(),
                sheet.pegs(),
                sheet.splices(),
                sheet.bands(),
                sheet.matches()),
            board.tails());

    assertThat(LeadLengthCheck.check(DRAWN.plan(), List.of(wrong)))
        .singleElement()
        .satisfies(it -> assertThat(Math.abs(it.boardMm() - 1100)).isGreaterThan(2.9));
  }

  @Test
  void seesAnEndThatIsNotOnTheBoard() {
    Map<String, String> tails = new LinkedHashMap<>(BOARDS.get(0).tails());
    tails.remove("T2");
    HarnessBoard wrong = with(BOARDS.get(0), BOARDS.get(0).plan().sheets().get(0), tails);

    assertThatThrownBy(() -> LeadLengthCheck.require(DRAWN.plan(), List.of(wrong)))
        .hasMessageContaining("lead L1 is 1100.0 mm long")
        .hasMessageContaining("does not join its ends");
  }

  /** Lines cut by match lines are measured as one. */
  @Test
  void measuresOverMatchLines() {
    int sheets = 0;
    for (long seed = 1; seed <= 10; seed++) {
      Drawn drawn = Harnesses.random(seed, 8, 700, 500);
      List<HarnessBoard> boards = HarnessBoard.of(drawn.plan(), drawn.order());
      for (HarnessBoard board : boards) {
        sheets = Math.max(sheets, board.plan().sheets().size());
      }
      assertThat(LeadLengthCheck.measure(drawn.plan(), boards))
          .isNotEmpty()
          .allSatisfy(it -> assertThat(Math.abs(it.boardMm() - it.listedMm())).isLessThan(1e-3));
    }
    assertThat(sheets).isGreaterThan(2);
  }

  private static HarnessBoard with(HarnessBoard board, Sheet sheet, Map<String, String> tails) {
    return new HarnessBoard(
        board.tree(),
        new BoardPlan(board.plan().name(), board.plan().board(), List.of(sheet), List.of()),
        board.words(),
        tails,
        board.joints(),
        board.places(),
        List.of());
  }

  private static Plan longer(double mm) {
    Harness it = DRAWN.plan().harness();
    List<Tail> tails = new ArrayList<>(it.tails());
    Tail last = tails.get(1);
    tails.set(
        1,
        new Tail(
            last.id(),
            last.place(),
            last.kind(),
            last.subject(),
            last.ends(),
            last.lengthMm() + mm));
    return Harnesses.plan(
        DRAWN.order(),
        DRAWN.plan().design(),
        new Harness(it.bundles(), tails, it.joints(), 0, 0, true, List.of(), List.of()));
  }
}
