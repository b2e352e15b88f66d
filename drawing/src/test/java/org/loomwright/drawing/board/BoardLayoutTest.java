package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.PegUse;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.BoardTree.Splice;

class BoardLayoutTest {

  @Test
  void aSmallTreeLiesStraightWithItsLongestWayAcross() {
    BoardTree tree = Trees.small();
    BoardPlan plan = laid(tree, Board.of(1600, 800));

    assertThat(plan.sheets()).hasSize(1);
    Sheet sheet = plan.sheets().get(0);
    assertThat(sheet.lines()).allMatch(line -> line.points().size() == 2);
    double height = 0;
    for (Line line : sheet.lines()) {
      if (List.of("W1", "W2", "W3", "W4").contains(line.branch())) {
        assertThat(line.points().get(0).yMm()).isEqualTo(line.points().get(1).yMm());
      }
      height = Math.max(height, Lines.around(line.points()).heightMm());
    }
    assertThat(height).isCloseTo(260, within(1e-6));
  }

  @Test
  void pegsStandBesideBundlesAtJunctionsAndEnds() {
    BoardTree tree = Trees.small();
    Sheet sheet = laid(tree, Board.of(1600, 800)).sheets().get(0);

    // Three branches meet at each of three junctions; two pegs hold each of five ends.
    assertThat(sheet.pegs()).filteredOn(peg -> peg.use() == PegUse.JUNCTION).hasSize(9);
    assertThat(sheet.pegs()).filteredOn(peg -> peg.use() == PegUse.END).hasSize(10);
    sheet.pegs().forEach(peg -> assertStandsFree(sheet, peg));
  }

  @Test
  void eachBendHasAPegInsideIt() {
    BoardTree tree = chain(4, 1500);
    BoardPlan plan = laid(tree, Board.of(1200, 800));
    Sheet sheet = plan.sheets().get(0);
    double turned = 0;
    for (Line line : sheet.lines()) {
      for (int i = 1; i + 1 < line.points().size(); i++) {
        turned +=
            Math.abs(
                Pegs.turnDegrees(
                    line.points().get(i - 1), line.points().get(i), line.points().get(i + 1)));
      }
    }
    long bends = sheet.pegs().stream().filter(peg -> peg.use() == PegUse.BEND).count();
    assertThat(turned).isGreaterThan(300);
    // One for each quarter; a bend of half a quarter has one too.
    assertThat((double) bends).isBetween(turned / 90 - 1e-6, turned / 45 + 1e-6);
    sheet.pegs().forEach(peg -> assertStandsFree(sheet, peg));
  }

  private static void assertStandsFree(Sheet sheet, BoardPlan.Peg peg) {
    for (Line line : sheet.lines()) {
      boolean stands =
          Lines.nearer(
              line.points(),
              Lines.around(line.points()),
              Texts.square(peg.at(), 0),
              (line.diameterMm() + peg.diameterMm()) / 2 - 0.1);
      assertThat(stands).as("%s in %s", peg, line.branch()).isFalse();
    }
  }

  @Test
  void theSameTreeGivesTheSamePlan() {
    BoardTree tree = Trees.random(99, 30);
    Board board = Board.of(1500, 900);

    assertThat(BoardLayout.of(tree, board)).isEqualTo(BoardLayout.of(tree, board));
  }

  @Test
  void aStarOfShortBranchesIsCutAtItsJunction() {
    List<Node> nodes = new ArrayList<>(List.of(new Junction("J")));
    List<Branch> branches = new ArrayList<>();
    for (int i = 1; i <= 12; i++) {
      nodes.add(Trees.connector("X" + i));
      branches.add(new Branch("W" + i, "J", "X" + i, 30, 5));
    }
    BoardPlan plan =
        laid(new BoardTree("star", nodes, branches, List.of(), List.of()), Board.of(1200, 800));

    assertThat(plan.sheets()).hasSize(1);
    assertThat(plan.sheets().get(0).matches()).hasSizeGreaterThanOrEqualTo(8);
  }

  @Test
  void aBranchTooLongForTheBoardIsCutIntoPieces() {
    BoardTree tree =
        new BoardTree(
            "long",
            List.of(Trees.connector("X1"), Trees.connector("X2")),
            List.of(new Branch("W", "X1", "X2", 3000, 30)),
            List.of(),
            List.of());
    BoardPlan plan = laid(tree, Board.of(500, 300));

    assertThat(plan.sheets().stream().flatMap(sheet -> sheet.lines().stream()))
        .hasSizeGreaterThan(4);
    assertThat(
            plan.sheets().stream()
                .flatMap(sheet -> sheet.lines().stream())
                .mapToDouble(line -> Lines.lengthMm(line.points()))
                .sum())
        .isCloseTo(3000, within(1e-6));
  }

  @Test
  void saysWhichEndIsTooLarge() {
    assertThatThrownBy(() -> BoardLayout.of(Trees.small(), Board.of(110, 70)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("end X1 fuse block with its table is larger than a board of 110 mm");
  }

  @Test
  void reportsSplicesThatAreTooNear() {
    BoardTree tree =
        new BoardTree(
            "splices",
            List.of(Trees.stud("A"), new Junction("J"), Trees.stud("B"), Trees.stud("C")),
            List.of(
                new Branch("P", "A", "J", 200, 5),
                new Branch("Q", "J", "B", 200, 5),
                new Branch("R", "J", "C", 200, 5)),
            List.of(
                new Splice("S1", "P", 100),
                new Splice("S2", "P", 145),
                new Splice("S3", "Q", 20),
                new Splice("S4", "R", 19),
                new Splice("S5", "R", 165)),
            List.of());

    // Hand-made: S2 is 45 from S1 and 55 from J; S3 and S4 are 39 apart over J.
    assertThat(SpliceSpacing.check(tree))
        .extracting(SpliceSpacing.Fault::splice, SpliceSpacing.Fault::other)
        .containsExactlyInAnyOrder(
            tuple("S1", "S2"),
            tuple("S3", "J"),
            tuple("S4", "J"),
            tuple("S3", "S4"),
            tuple("S5", "C"));
  }

  @Test
  void lettersGoOnAfterTheAlphabet() {
    assertThat(Stream.of(0, 8, 23, 24, 47, 48).map(BoardLayout::letter))
        .containsExactly("A", "J", "Z", "AA", "AZ", "BA");
  }

  static BoardTree chain(int branchCount, double lengthMm) {
    List<Node> nodes = new ArrayList<>(List.of(Trees.connector("X1")));
    List<Branch> branches = new ArrayList<>();
    for (int i = 1; i <= branchCount; i++) {
      nodes.add(i == branchCount ? Trees.connector("X2") : new Junction("J" + i));
      branches.add(new Branch("W" + i, nodes.get(i - 1).name(), nodes.get(i).name(), lengthMm, 8));
    }
    return new BoardTree("chain", nodes, branches, List.of(), List.of());
  }

  private static BoardPlan laid(BoardTree tree, Board board) {
    BoardPlan plan = BoardLayout.of(tree, board);
    assertThat(BoardChecker.check(tree, plan)).isEmpty();
    return plan;
  }
}
