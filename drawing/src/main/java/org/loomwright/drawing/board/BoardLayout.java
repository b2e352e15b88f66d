package org.loomwright.drawing.board;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.PartPlacer.Cut;
import org.loomwright.drawing.board.PartPlacer.Habit;
import org.loomwright.drawing.board.PartPlacer.Order;
import org.loomwright.drawing.board.Piece.Knot;

/**
 * Lays a tree flat at true length.
 *
 * <p>The longest way through the tree lies along the board, straight where it fits and in rows
 * where not. Other branches leave it square, or on a slant of 45°, to one side after the other;
 * long ones bend or fold. Each is laid only where it keeps the clearance to all that lies already.
 * What finds no room is cut off at its junction and goes elsewhere on the sheet or on another one,
 * joined by a match line; a branch that is too long for an empty board is cut in the middle. So
 * there is always a plan when each single end has room on the board. The whole is tried in several
 * ways, and the one with the fewest sheets counts, then the fewest match lines, bends, and the
 * least height. The same input gives the same plan.
 */
public final class BoardLayout {
  private static final List<Habit> HABITS =
      List.of(
          new Habit(Order.SHORT_FIRST, 1, 0.5, false),
          new Habit(Order.LONG_FIRST, 1, 0.5, false),
          new Habit(Order.ALONG, 1, 0.5, false),
          new Habit(Order.SHORT_FIRST, -1, 0.4, true),
          new Habit(Order.LONG_FIRST, -1, 0.6, true));

  private static final int MANY_BRANCHES = 25;
  private static final int WAYS_FOR_MANY = 2;

  /** A branch is not cut into pieces shorter than this, mm. */
  private static final double LEAST_PIECE_MM = 20;

  private final Board board;
  private final Habit habit;
  private final Deque<Part> open = new ArrayDeque<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Seam> seams = new ArrayList<>();
  private int knots;

  private BoardLayout(Board board, Habit habit) {
    this.board = board;
    this.habit = habit;
  }

  /**
   * Two knots that are one place of the harness.
   *
   * @param atMm place on the branch, mm
   */
  record Seam(String letter, Branch branch, double atMm, Knot one, Knot other) {}

  /**
   * Lays the tree on as few boards as found.
   *
   * @throws BoardTooSmall when an end or a bundle is too large for the board; names it
   */
  public static BoardPlan of(BoardTree tree, Board board) {
    TooLarge.check(tree, board);
    Optional<BoardLayout> best = Optional.empty();
    // Large trees take longer and gain less from more ways.
    int ways = tree.branches().size() > MANY_BRANCHES ? WAYS_FOR_MANY : HABITS.size();
    for (Habit habit : HABITS.subList(0, ways)) {
      BoardLayout layout = new BoardLayout(board, habit);
      layout.fill(tree);
      if (best.isEmpty() || BETTER.compare(layout, best.get()) < 0) {
        best = Optional.of(layout);
      }
      if (layout.drafts.size() == 1 && layout.seams.isEmpty() && layout.bends() == 0) {
        break;
      }
    }
    BoardLayout found = best.orElseThrow();
    return PlanMaker.make(tree, board, found.drafts, found.seams);
  }

  private static final Comparator<BoardLayout> BETTER =
      Comparator.comparingInt((BoardLayout layout) -> layout.drafts.size())
          .thenComparingInt(layout -> layout.seams.size())
          .thenComparingInt(BoardLayout::bends)
          .thenComparingDouble(BoardLayout::heightMm);

  private int bends() {
    return drafts.stream()
        .flatMap(draft -> draft.pieces().stream())
        .mapToInt(Draft.LaidPiece::bends)
        .sum();
  }

  private double heightMm() {
    double sum = 0;
    for (Draft draft : drafts) {
      List<Point> corners = new ArrayList<>();
      for (Draft.LaidPiece laid : draft.pieces()) {
        corners.addAll(laid.line());
      }
      for (Draft.LaidTip tip : draft.tips()) {
        corners.add(new Point(tip.body().xMm(), tip.body().yMm()));
        corners.add(new Point(tip.body().rightMm(), tip.body().bottomMm()));
      }
      sum += Lines.around(corners).heightMm();
    }
    return sum;
  }

  private void fill(BoardTree tree) {
    open.add(whole(tree));
    while (!open.isEmpty()) {
      Draft draft = new Draft(board);
      Part first = open.remove();
      Optional<List<Cut>> cuts = PartPlacer.alone(draft, first, habit);
      if (cuts.isEmpty()) {
        halve(first);
        continue;
      }
      drafts.add(draft);
      List<Part> fresh = new ArrayList<>();
      for (Cut cut : cuts.get()) {
        fresh.add(cutOff(first, cut));
      }
      // What was cut off may still find room elsewhere on the same sheet.
      List<Part> waiting = new ArrayList<>(open);
      waiting.addAll(fresh);
      open.clear();
      waiting.sort(Comparator.comparingDouble(Part::lengthMm).reversed());
      for (Part part : waiting) {
        if (!PartPlacer.beside(draft, part, habit)) {
          open.add(part);
        }
      }
    }
  }

  private Part whole(BoardTree tree) {
    Map<String, Knot> byName = new LinkedHashMap<>();
    for (Node node : tree.nodes()) {
      byName.put(node.name(), new Knot(knots++, Optional.of(node), Optional.empty()));
    }
    List<Piece> pieces = new ArrayList<>();
    for (Branch branch : tree.branches()) {
      Knot from = byName.get(branch.from());
      Knot to = byName.get(branch.to());
      if (from != null && to != null) {
        pieces.add(new Piece(branch, 0, branch.lengthMm(), from, to));
      }
    }
    return new Part(pieces);
  }

  private Part cutOff(Part part, Cut cut) {
    String letter = letter(seams.size());
    Knot fresh = new Knot(knots++, Optional.empty(), Optional.of(letter));
    Piece through = cut.through();
    double atMm = through.first().equals(cut.knot()) ? through.fromMm() : through.toMm();
    seams.add(new Seam(letter, through.branch(), atMm, cut.knot(), fresh));
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : part.beyond(cut.knot(), through)) {
      pieces.add(piece.equals(through) ? piece.withKnot(cut.knot(), fresh) : piece);
    }
    return new Part(pieces);
  }

  /** Cuts the first piece of a part's longest way in the middle. */
  private void halve(Part part) {
    List<Part.Step> spine = part.spine();
    Part.Step step = habit.isReversed() ? spine.get(spine.size() - 1) : spine.get(0);
    Piece piece = step.piece();
    if (piece.lengthMm() < 2 * LEAST_PIECE_MM) {
      throw new BoardTooSmall(
          String.format(
              Locale.ROOT,
              "branch %s, %.1f mm thick, and what is at its end find no room on a board of"
                  + " %.0f mm x %.0f mm; take a larger board",
              piece.branch().name(),
              piece.branch().diameterMm(),
              board.widthMm(),
              board.heightMm()));
    }
    String letter = letter(seams.size());
    Knot one = new Knot(knots++, Optional.empty(), Optional.of(letter));
    Knot other = new Knot(knots++, Optional.empty(), Optional.of(letter));
    double middle = (piece.fromMm() + piece.toMm()) / 2;
    seams.add(new Seam(letter, piece.branch(), middle, one, other));
    List<Piece> left = new ArrayList<>(part.beyond(piece.second(), piece));
    List<Piece> right = new ArrayList<>(part.beyond(piece.first(), piece));
    left.remove(piece);
    right.remove(piece);
    left.add(new Piece(piece.branch(), piece.fromMm(), middle, piece.first(), one));
    right.add(new Piece(piece.branch(), middle, piece.toMm(), other, piece.second()));
    open.addFirst(new Part(right));
    open.addFirst(new Part(left));
  }

  /** A, B, C … without I and O, then AA, AB … */
  static String letter(int index) {
    String letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    String last = letters.substring(index % 24, index % 24 + 1);
    return index < 24 ? last : letter(index / 24 - 1) + last;
  }
}
