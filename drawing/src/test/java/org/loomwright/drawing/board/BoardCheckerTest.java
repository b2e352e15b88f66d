package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/** Faults planted in a right plan. */
class BoardCheckerTest {
  private static final BoardTree TREE = Trees.small();
  private static final BoardPlan PLAN = BoardLayout.of(TREE, Board.of(1600, 800));

  @Test
  void aRightPlanHasNoFault() {
    assertThat(BoardChecker.check(TREE, PLAN)).isEmpty();
  }

  @Test
  void seesALengthThatIsOffByAHundredth() {
    finds(
        lines(is("W4"), line -> moved(line, line.points().size() - 1, 0.01, 0)),
        "branch W4 is 48",
        "does not reach");
  }

  @Test
  void seesTwoBranchesThatCross() {
    // W6 is laid over the spine on the far side of J3.
    Point joint = first(is("W7")).points().get(0);
    finds(
        lines(is("W6"), line -> with(line, List.of(joint.plus(60, -90), joint.plus(60, 90)))),
        "branches W4 and W6 cross");
  }

  @Test
  void seesTwoBranchesThatRunTooNear() {
    Point joint = first(is("W7")).points().get(0);
    finds(
        lines(is("W6"), line -> with(line, List.of(joint.plus(200, 14), joint.plus(20, 14)))),
        "branches W4 and W6 come nearer than 10.0 mm");
  }

  /**
   * In the stretch where branches may come near, because they meet, they still must not overlap.
   */
  @Test
  void seesTwoBranchesThatOverlapBesideTheirJunction() {
    Point joint = first(is("W7")).points().get(0);
    List<Point> beside =
        List.of(joint, joint.plus(0, 5), joint.plus(30, 5), joint.plus(30, 5 + 220 - 35));
    finds(
        lines(is("W7"), line -> with(line, beside)),
        "branches W4 and W7 overlap beside the junction");
  }

  @Test
  void seesAPegInABundle() {
    Sheet sheet = PLAN.sheets().get(0);
    List<BoardPlan.Peg> pegs = new ArrayList<>(sheet.pegs());
    BoardPlan.Peg peg = pegs.get(0);
    pegs.set(
        0,
        new BoardPlan.Peg(
            first(is("W7")).points().get(0).plus(60, 0), peg.diameterMm(), peg.use(), "J3"));
    finds(
        new BoardPlan(
            PLAN.name(),
            PLAN.board(),
            List.of(
                new Sheet(
                    1,
                    sheet.lines(),
                    sheet.joints(),
                    sheet.ends(),
                    pegs,
                    sheet.splices(),
                    sheet.bands(),
                    sheet.matches())),
            PLAN.spliceFaults()),
        "a peg of J3 stands in something");
  }

  @Test
  void seesABranchThatRunsBackOverItsNeighbour() {
    Point joint = first(is("W7")).points().get(0);
    finds(
        lines(is("W7"), line -> with(line, List.of(joint, joint.plus(220, 0)))),
        "branches W4 and W7 cross");
  }

  @Test
  void seesABranchThatLeavesTheBoard() {
    finds(lines(line -> true, line -> shifted(line, 0, 500)), "leaves the board");
  }

  @Test
  void seesASharpBend() {
    Point joint = first(is("W7")).points().get(0);
    finds(
        lines(
            is("W7"),
            line ->
                with(line, List.of(joint, joint.plus(0, 4), joint.plus(4, 4), joint.plus(212, 4)))),
        "branch W7 bends with a radius of");
  }

  @Test
  void seesABranchFoldedOntoItself() {
    Point joint = first(is("W7")).points().get(0);
    List<Point> folded = List.of(joint, joint.plus(0, 105), joint.plus(10, 105), joint.plus(10, 0));
    finds(lines(is("W7"), line -> with(line, folded)), "branch W7 runs into itself");
  }

  @Test
  void seesEndsThatOverlap() {
    Box other = end("G1").body();
    finds(
        ends("F1", end -> at(end, other.middle(), other.grown(-1), end.table())),
        "end G1 and end F1 are too near",
        "end F1 has not its true size");
  }

  @Test
  void seesABranchThroughATable() {
    Box spot = new Box(first(is("W6")).points().get(1).xMm() - 30, 300, 70, 34);
    finds(
        ends("X2 module", end -> at(end, end.at(), end.body(), Optional.of(spot))),
        "branch W6 runs too near to end X2 module");
  }

  @Test
  void seesAnEndOffTheBoard() {
    finds(
        ends(
            "X1 fuse block",
            end ->
                at(
                    end,
                    end.at(),
                    new Box(-5, end.body().yMm(), end.body().widthMm(), end.body().heightMm()),
                    end.table())),
        "end X1 fuse block leaves the board");
  }

  @Test
  void seesWhatIsMissing() {
    Sheet sheet = PLAN.sheets().get(0);
    finds(
        sheet(
            sheet.lines().stream().filter(is("W3").negate()).toList(),
            sheet.ends().stream().filter(end -> !end.name().equals("G1")).toList(),
            sheet.matches()),
        "branch W3 is not laid from end to end",
        "node G1 is laid 0 times",
        "branch W6 does not reach G1");
  }

  @Test
  void seesAMatchLineWithOneSide() {
    BoardTree tree = Trees.random(3, 40);
    BoardPlan plan = BoardLayout.of(tree, Board.of(600, 400));
    assertThat(plan.sheets()).hasSizeGreaterThan(1);
    Sheet last = plan.sheets().get(plan.sheets().size() - 1);
    List<Sheet> sheets = new ArrayList<>(plan.sheets());
    sheets.set(sheets.size() - 1, with(last, last.lines(), last.ends(), List.of()));

    assertThat(
            BoardChecker.check(
                tree, new BoardPlan(plan.name(), plan.board(), sheets, plan.spliceFaults())))
        .anyMatch(fault -> fault.contains("stops without a match line"))
        .anyMatch(fault -> fault.contains("has 1 sides"));
  }

  private static void finds(BoardPlan plan, String... words) {
    List<String> faults = BoardChecker.check(TREE, plan);
    for (String word : words) {
      assertThat(faults).anyMatch(fault -> fault.contains(word));
    }
  }

  private static Predicate<Line> is(String branch) {
    return line -> line.branch().equals(branch);
  }

  private static Line first(Predicate<Line> wanted) {
    return PLAN.sheets().get(0).lines().stream()
        .filter(wanted)
        // From the junction on, which all side branches of this tree start at.
        .findFirst()
        .orElseThrow();
  }

  private static LaidEnd end(String name) {
    return PLAN.sheets().get(0).ends().stream()
        .filter(end -> end.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static BoardPlan lines(Predicate<Line> which, UnaryOperator<Line> change) {
    Sheet sheet = PLAN.sheets().get(0);
    return sheet(
        sheet.lines().stream().map(line -> which.test(line) ? change.apply(line) : line).toList(),
        sheet.ends(),
        sheet.matches());
  }

  private static BoardPlan ends(String name, UnaryOperator<LaidEnd> change) {
    Sheet sheet = PLAN.sheets().get(0);
    return sheet(
        sheet.lines(),
        sheet.ends().stream()
            .map(end -> end.name().equals(name) ? change.apply(end) : end)
            .toList(),
        sheet.matches());
  }

  private static BoardPlan sheet(
      List<Line> lines, List<LaidEnd> ends, List<BoardPlan.Match> matches) {
    return new BoardPlan(
        PLAN.name(),
        PLAN.board(),
        List.of(with(PLAN.sheets().get(0), lines, ends, matches)),
        PLAN.spliceFaults());
  }

  private static Sheet with(
      Sheet sheet, List<Line> lines, List<LaidEnd> ends, List<BoardPlan.Match> matches) {
    return new Sheet(
        sheet.number(),
        lines,
        sheet.joints(),
        ends,
        sheet.pegs(),
        sheet.splices(),
        sheet.bands(),
        matches);
  }

  private static Line with(Line line, List<Point> points) {
    return new Line(
        line.branch(),
        line.start(),
        line.end(),
        line.fromMm(),
        line.toMm(),
        line.diameterMm(),
        points);
  }

  private static Line moved(Line line, int index, double dx, double dy) {
    List<Point> points = new ArrayList<>(line.points());
    points.set(index, points.get(index).plus(dx, dy));
    return with(line, points);
  }

  private static Line shifted(Line line, double dx, double dy) {
    return with(line, line.points().stream().map(point -> point.plus(dx, dy)).toList());
  }

  private static LaidEnd at(LaidEnd end, Point at, Box body, Optional<Box> table) {
    return new LaidEnd(end.name(), end.kind(), end.branch(), at, end.headingDegrees(), body, table);
  }
}
