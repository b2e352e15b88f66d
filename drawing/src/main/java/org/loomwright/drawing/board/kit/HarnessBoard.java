package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardLayout;
import org.loomwright.drawing.board.BoardPlan;
import org.loomwright.drawing.board.BoardTree;
import org.loomwright.drawing.board.BoardWords;
import org.loomwright.drawing.board.SpliceSpacing;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;

/**
 * A tree of a kit's harness on the build board.
 *
 * @param tree the tree with true lengths
 * @param plan the tree laid out
 * @param words faces, tables and words for it
 * @param tails where tails are: id of the tail to the name of the tree's end
 * @param joints where joints are: id of the joint to the name of the tree's splice or end
 * @param places where places are: id of the place to the name of the tree's node, for those that
 *     are a node
 * @param spliceFaults splices nearer to something than the shop's rules allow
 */
public record HarnessBoard(
    BoardTree tree,
    BoardPlan plan,
    BoardWords words,
    Map<String, String> tails,
    Map<String, String> joints,
    Map<String, String> places,
    List<SpliceSpacing.Fault> spliceFaults) {

  /** Strip along the board's edges that stays free, mm; common practice. */
  private static final double MARGIN_MM = 20;

  /** Between two things on the board, mm, so that fingers and pegs find room; common practice. */
  private static final double CLEARANCE_MM = 10;

  public HarnessBoard {
    tails = Collections.unmodifiableMap(new LinkedHashMap<>(tails));
    joints = Collections.unmodifiableMap(new LinkedHashMap<>(joints));
    places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    spliceFaults = List.copyOf(spliceFaults);
  }

  /**
   * Lays out the whole harness of a plan, a board for each tree of it, on boards of the size that
   * the rules give.
   *
   * @return the boards, the tree of the first bundle first; empty when there is no harness
   * @throws org.loomwright.drawing.board.BoardTooSmall when something is larger than the board;
   *     names it
   * @throws IllegalStateException when a lead is not as long on the board as in the list of leads;
   *     names the lead and both lengths
   */
  public static List<HarnessBoard> of(Plan plan, KitOrder order) {
    Board board = board(order);
    List<HarnessGraph> graphs = HarnessGraph.of(plan, order.parts());
    EndNames names = EndNames.of(plan, order);
    List<HarnessBoard> boards = new ArrayList<>();
    for (int i = 0; i < graphs.size(); i++) {
      String name =
          graphs.size() == 1
              ? order.kit().name()
              : String.format(
                  Locale.ROOT, "%s, part %d of %d", order.kit().name(), i + 1, graphs.size());
      boards.add(laid(new TreeMaker(plan, order, names, board).make(name, graphs.get(i)), order));
    }
    LeadLengthCheck.require(plan, boards);
    return List.copyOf(boards);
  }

  /** The board that the shop's rules ask for. */
  static Board board(KitOrder order) {
    return new Board(
        RunDefaults.boardWidth(order.rules()).value().mm(),
        RunDefaults.boardHeight(order.rules()).value().mm(),
        MARGIN_MM,
        CLEARANCE_MM,
        RunDefaults.bendFixed(order.rules()).value().fraction());
  }

  private static HarnessBoard laid(TreeMaker.Made made, KitOrder order) {
    double apartMm = order.rules().spliceSpacing().value().mm();
    List<SpliceSpacing.Fault> faults = SpliceSpacing.check(made.tree(), apartMm, apartMm);
    List<String> notes = new ArrayList<>(made.notes());
    for (SpliceSpacing.Fault fault : faults) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s is %.0f mm from %s; %.0f mm wanted",
              fault.splice(),
              fault.distanceMm(),
              fault.other(),
              fault.limitMm()));
    }
    return new HarnessBoard(
        made.tree(),
        BoardLayout.of(made.tree(), board(order)),
        new BoardWords(made.insets(), made.branchWords(), notes),
        made.tails(),
        made.joints(),
        made.places(),
        faults);
  }
}
