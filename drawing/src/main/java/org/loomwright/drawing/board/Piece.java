package org.loomwright.drawing.board;

import java.util.Optional;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.Node;

/**
 * A branch or a part of one, as laid on a sheet in one go.
 *
 * @param branch the whole branch
 * @param fromMm where the part begins on the branch, mm
 * @param toMm where it ends, mm
 * @param first the knot at {@code fromMm}
 * @param second the knot at {@code toMm}
 */
record Piece(Branch branch, double fromMm, double toMm, Knot first, Knot second) {

  /** Where pieces meet or end: a node of the tree or one side of a match line. */
  record Knot(int id, Optional<Node> node, Optional<String> letter) {}

  double lengthMm() {
    return toMm - fromMm;
  }

  Knot other(Knot knot) {
    return knot.equals(first) ? second : first;
  }

  Piece withKnot(Knot old, Knot fresh) {
    return new Piece(
        branch,
        fromMm,
        toMm,
        first.equals(old) ? fresh : first,
        second.equals(old) ? fresh : second);
  }
}
