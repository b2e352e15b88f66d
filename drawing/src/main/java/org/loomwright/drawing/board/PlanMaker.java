package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardLayout.Seam;
import org.loomwright.drawing.board.BoardPlan.Band;
import org.loomwright.drawing.board.BoardPlan.Breakout;
import org.loomwright.drawing.board.BoardPlan.Joint;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardPlan.Spot;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.Mark;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.BoardTree.Splice;
import org.loomwright.drawing.board.Draft.LaidPiece;
import org.loomwright.drawing.board.Draft.LaidTip;
import org.loomwright.drawing.board.Piece.Knot;

/** Makes a plan from filled sheets: names, pegs, splices, labels and match lines. */
final class PlanMaker {
  private final BoardTree tree;
  private final List<Draft> drafts;
  private final List<Seam> seams;

  private PlanMaker(BoardTree tree, List<Draft> drafts, List<Seam> seams) {
    this.tree = tree;
    this.drafts = drafts;
    this.seams = seams;
  }

  static BoardPlan make(BoardTree tree, Board board, List<Draft> drafts, List<Seam> seams) {
    PlanMaker maker = new PlanMaker(tree, drafts, seams);
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      sheets.add(maker.sheet(i));
    }
    return new BoardPlan(tree.name(), board, sheets, SpliceSpacing.check(tree));
  }

  private Sheet sheet(int index) {
    Draft draft = drafts.get(index);
    List<Line> lines = new ArrayList<>();
    Map<String, List<Breakout>> breakouts = new LinkedHashMap<>();
    Map<String, Point> places = new LinkedHashMap<>();
    for (LaidPiece laid : draft.pieces()) {
      lines.add(line(laid));
      breakout(laid.piece(), laid.piece().first(), laid.line(), breakouts, places);
      breakout(laid.piece(), laid.piece().second(), Lines.reversed(laid.line()), breakouts, places);
    }
    List<Joint> joints = new ArrayList<>();
    places.forEach(
        (name, at) -> joints.add(new Joint(name, at, breakouts.getOrDefault(name, List.of()))));
    List<LaidEnd> ends = new ArrayList<>();
    for (LaidTip tip : draft.tips()) {
      tip.knot()
          .node()
          .filter(End.class::isInstance)
          .map(End.class::cast)
          .ifPresent(end -> ends.add(end(end, tip)));
    }
    List<Match> matches = matches(index);
    return new Sheet(
        index + 1,
        lines,
        joints,
        ends,
        Pegs.of(lines, joints, ends, matches),
        splices(lines),
        bands(lines),
        matches);
  }

  private static Line line(LaidPiece laid) {
    Piece piece = laid.piece();
    return new Line(
        piece.branch().name(),
        piece.first().node().map(Node::name),
        piece.second().node().map(Node::name),
        piece.fromMm(),
        piece.toMm(),
        piece.branch().diameterMm(),
        laid.line());
  }

  private static void breakout(
      Piece piece,
      Knot knot,
      List<Point> line,
      Map<String, List<Breakout>> breakouts,
      Map<String, Point> places) {
    if (knot.node().isPresent() && knot.node().get() instanceof BoardTree.Junction junction) {
      Point at = line.get(0);
      places.putIfAbsent(junction.name(), at);
      double outMm = Math.min(piece.branch().diameterMm() + 4, piece.lengthMm() / 2);
      breakouts
          .computeIfAbsent(junction.name(), any -> new ArrayList<>())
          .add(
              new Breakout(
                  piece.branch().name(),
                  Lines.place(line, outMm).at(),
                  Draft.headingDegrees(at, line.get(1))));
    }
  }

  private static LaidEnd end(End end, LaidTip tip) {
    return new LaidEnd(
        end.name(),
        end.kind(),
        tip.piece().branch().name(),
        tip.at(),
        tip.headingDegrees(),
        tip.body(),
        tip.table());
  }

  private List<Spot> splices(List<Line> lines) {
    List<Spot> spots = new ArrayList<>();
    for (Splice splice : tree.splices()) {
      // A splice on a cut through its branch is shown on both sheets.
      for (Line line : lines) {
        if (line.branch().equals(splice.branch())
            && splice.atMm() >= line.fromMm()
            && splice.atMm() <= line.toMm()) {
          Lines.Place place = Lines.place(line.points(), splice.atMm() - line.fromMm());
          spots.add(
              new Spot(
                  splice.name(),
                  splice.branch(),
                  splice.atMm(),
                  place.at(),
                  place.headingDegrees()));
        }
      }
    }
    return spots;
  }

  private List<Band> bands(List<Line> lines) {
    List<Band> bands = new ArrayList<>();
    for (Mark mark : tree.marks()) {
      for (Line line : lines) {
        if (line.branch().equals(mark.branch())) {
          List<Point> covered =
              Lines.between(
                  line.points(),
                  mark.atMm() - mark.lengthMm() / 2 - line.fromMm(),
                  mark.atMm() + mark.lengthMm() / 2 - line.fromMm());
          if (!covered.isEmpty()) {
            bands.add(new Band(mark.kind(), mark.branch(), mark.atMm(), mark.text(), covered));
          }
        }
      }
    }
    return bands;
  }

  private List<Match> matches(int index) {
    List<Match> matches = new ArrayList<>();
    for (Seam seam : seams) {
      match(seam, seam.one(), seam.other(), index).ifPresent(matches::add);
      match(seam, seam.other(), seam.one(), index).ifPresent(matches::add);
    }
    return matches;
  }

  private Optional<Match> match(Seam seam, Knot here, Knot there, int index) {
    int otherSheet = 1;
    for (int i = 0; i < drafts.size(); i++) {
      if (find(drafts.get(i), there).isPresent()) {
        otherSheet = i + 1;
      }
    }
    int other = otherSheet;
    Optional<LaidTip> tip =
        drafts.get(index).tips().stream().filter(it -> it.knot().equals(here)).findFirst();
    return find(drafts.get(index), here)
        .map(
            at ->
                new Match(
                    seam.letter(),
                    seam.branch().name(),
                    seam.atMm(),
                    at,
                    tip.map(LaidTip::headingDegrees).orElse(0),
                    tip.map(LaidTip::body),
                    other));
  }

  private static Optional<Point> find(Draft draft, Knot knot) {
    for (LaidPiece laid : draft.pieces()) {
      if (laid.piece().first().equals(knot)) {
        return Optional.of(laid.line().get(0));
      }
      if (laid.piece().second().equals(knot)) {
        return Optional.of(laid.line().get(laid.line().size() - 1));
      }
    }
    return Optional.empty();
  }
}
