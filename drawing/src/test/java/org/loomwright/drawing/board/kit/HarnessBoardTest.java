package org.loomwright.drawing.board.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardChecker;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.BoardTree;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.drawing.ink.RenderedTexts;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Tail;

/** Boards of harnesses drawn by lot. */
class HarnessBoardTest {

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void everyLeadIsAsLongAsListedAndEveryEndIsThere(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 20) int places) {
    Drawn drawn = Harnesses.random(seed, places);
    List<HarnessBoard> boards = HarnessBoard.of(drawn.plan(), drawn.order());

    assertThat(LeadLengthCheck.check(drawn.plan(), boards)).isEmpty();
    Set<String> tails = new LinkedHashSet<>();
    Set<String> joints = new LinkedHashSet<>();
    Set<String> names = new LinkedHashSet<>();
    int branches = 0;
    for (HarnessBoard board : boards) {
      assertThat(BoardChecker.check(board.tree(), board.plan())).isEmpty();
      tails.addAll(board.tails().keySet());
      joints.addAll(board.joints().keySet());
      assertThat(names).doesNotContainAnyElementsOf(board.tails().values());
      names.addAll(board.tails().values());
      branches += board.tree().branches().size();
      for (Sheet sheet : board.plan().sheets()) {
        assertThat(BoardSvg.crowdedOut(board.plan(), sheet, board.words())).isEmpty();
      }
    }
    assertThat(tails)
        .containsExactlyInAnyOrderElementsOf(
            drawn.plan().harness().tails().stream().map(Tail::id).toList());
    assertThat(joints)
        .containsExactlyInAnyOrderElementsOf(
            drawn.plan().harness().joints().stream().map(JointSpot::joint).toList());
    Statistics.label("boards").collect(Math.min(boards.size(), 4));
    Statistics.label("branches").collect(branches / 20 * 20);
  }

  /** Boards with faces and tables, as a browser sets them. */
  @Test
  void noTextLiesOnAnother() {
    List<String> svgs = new ArrayList<>();
    for (long seed = 1; seed <= 20; seed++) {
      Drawn drawn = Harnesses.random(seed, 2 + (int) (seed % 14));
      for (HarnessBoard board : HarnessBoard.of(drawn.plan(), drawn.order())) {
        for (Sheet sheet : board.plan().sheets()) {
          svgs.add(BoardSvg.document(board.plan(), sheet, board.words()));
        }
      }
    }
    RenderedTexts seen = RenderedTexts.of(svgs);
    seen.areSound();
    assertThat(seen.count()).isGreaterThan(2000);
  }

  @Test
  void aPlaceWithOneBundleAndOneTailIsNoBreakout() {
    Drawn drawn = ByHand.oneLead();
    HarnessBoard board = HarnessBoard.of(drawn.plan(), drawn.order()).get(0);

    assertThat(board.tree().branches()).hasSize(1);
    assertThat(board.tree().branches().get(0).lengthMm()).isEqualTo(120 + 900 + 80);
    assertThat(board.tree().nodes()).allMatch(BoardTree.End.class::isInstance);
    // A label from 25 mm to 50 mm behind each terminal, and tape where the covering ends.
    assertThat(board.tree().marks())
        .filteredOn(it -> it.kind() == BoardTree.MarkKind.LABEL)
        .extracting(BoardTree.Mark::atMm)
        .containsExactly(37.5, 1100 - 37.5);
    assertThat(board.tree().marks())
        .filteredOn(it -> it.kind() == BoardTree.MarkKind.TAPE)
        .extracting(BoardTree.Mark::atMm)
        .containsExactly(120.0, 1020.0);
  }

  @Test
  void aKitWithoutHarnessHasNoBoard() {
    Drawn drawn = ByHand.oneLead();
    assertThat(
            HarnessBoard.of(
                Harnesses.plan(
                    drawn.order(), drawn.plan().design(), org.loomwright.model.design.Harness.NONE),
                drawn.order()))
        .isEmpty();
  }
}
