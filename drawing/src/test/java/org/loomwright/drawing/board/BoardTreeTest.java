package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Mark;
import org.loomwright.drawing.board.BoardTree.MarkKind;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.BoardTree.Splice;

class BoardTreeTest {
  private static final List<Node> NODES =
      List.of(Trees.stud("A"), new Junction("J"), Trees.stud("B"), Trees.stud("C"));

  @Test
  void saysWhatClosesALoop() {
    refuses(
        List.of(branch("P", "A", "J", 50), branch("Q", "J", "B", 50), branch("R", "B", "A", 50)),
        "not a tree: branch R closes a loop between B and A");
  }

  @Test
  void saysWhatDoesNotHangTogether() {
    refuses(
        List.of(branch("P", "A", "J", 50), branch("Q", "B", "J", 50)),
        "no branch joins the parts that hold B, C");
  }

  @Test
  void refusesLengthsThatAreNone() {
    for (double length : new double[] {0, -3, Double.NaN, Double.POSITIVE_INFINITY}) {
      refuses(
          List.of(branch("P", "A", "J", length)),
          "branch P: its length is " + length + " mm; it must be more than 0");
    }
  }

  @Test
  void refusesUnknownNodesAndNamesUsedTwice() {
    refuses(
        List.of(branch("P", "A", "K", 50), branch("P", "A", "A", 50)),
        "branch P: there is no node K",
        "branch P is there twice",
        "it begins and ends at A");
  }

  @Test
  void refusesEndsWithTwoBranchesAndJunctionsWithOne() {
    refuses(
        List.of(branch("P", "A", "B", 50), branch("Q", "B", "C", 50), branch("R", "B", "J", 9)),
        "end B has 3 branches; an end has just one",
        "junction J has a single branch; make it an end");
  }

  @Test
  void refusesMarksBesideTheirBranch() {
    List<Branch> star =
        List.of(branch("P", "A", "J", 50), branch("Q", "J", "B", 50), branch("R", "J", "C", 50));
    assertThatThrownBy(
            () ->
                new BoardTree(
                    "t",
                    NODES,
                    star,
                    List.of(new Splice("S", "P", 51), new Splice("T", "Z", 1)),
                    List.of(new Mark(MarkKind.LABEL, "Q", 5, 20, "words"))))
        .hasMessageContaining("splice S at 51.0 mm does not lie on branch P, which is 50.0 mm long")
        .hasMessageContaining("splice T: there is no branch Z")
        .hasMessageContaining("label \"words\" at 5.0 mm does not lie on branch Q");
  }

  private static Branch branch(String name, String from, String to, double lengthMm) {
    return new Branch(name, from, to, lengthMm, 5);
  }

  private static void refuses(List<Branch> branches, String... words) {
    assertThatThrownBy(() -> new BoardTree("t", NODES, branches, List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }
}
