package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.loomwright.drawing.board.BoardTree;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.EndKind;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Node;

/** Made-up trees for the board: trunks with side branches, connectors with tables at their ends. */
final class GrownTree {
  private static final long SEED = 4;

  /** A branch grows from one of so many before it. */
  private static final int REACH = 4;

  private GrownTree() {}

  /** A tree of so many branches, the same each time. */
  static BoardTree of(int count) {
    Random random = new Random(SEED);
    int[] parents = new int[count + 1];
    int[] degrees = new int[count + 1];
    for (int i = 1; i <= count; i++) {
      parents[i] = i - 1 - random.nextInt(Math.min(i, REACH));
      degrees[i]++;
      degrees[parents[i]]++;
    }
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      nodes.add(
          degrees[i] > 1
              ? new Junction("J" + i)
              : new End("X" + i, EndKind.CONNECTOR, 40, 30, 90, 40));
    }
    List<Branch> branches = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      branches.add(
          new Branch(
              "B" + i,
              nodes.get(parents[i]).name(),
              nodes.get(i).name(),
              80 + random.nextInt(700),
              3 + random.nextInt(12)));
    }
    return new BoardTree(count + " branches", nodes, branches, List.of(), List.of());
  }
}
