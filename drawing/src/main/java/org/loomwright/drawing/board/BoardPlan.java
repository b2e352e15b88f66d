package org.loomwright.drawing.board;

import java.util.List;
import java.util.Optional;

/**
 * A tree laid on one board or on several.
 *
 * @param name what the harness is called
 * @param board the board, the same for all sheets
 * @param sheets one board's worth each; match lines join them
 * @param spliceFaults splices nearer to something than the trade allows
 */
public record BoardPlan(
    String name, Board board, List<Sheet> sheets, List<SpliceSpacing.Fault> spliceFaults) {

  public BoardPlan {
    sheets = List.copyOf(sheets);
    spliceFaults = List.copyOf(spliceFaults);
  }

  /**
   * One board.
   *
   * @param number from 1
   */
  public record Sheet(
      int number,
      List<Line> lines,
      List<Joint> joints,
      List<LaidEnd> ends,
      List<Peg> pegs,
      List<Spot> splices,
      List<Band> bands,
      List<Match> matches) {
    public Sheet {
      lines = List.copyOf(lines);
      joints = List.copyOf(joints);
      ends = List.copyOf(ends);
      pegs = List.copyOf(pegs);
      splices = List.copyOf(splices);
      bands = List.copyOf(bands);
      matches = List.copyOf(matches);
    }
  }

  /**
   * A branch, or a part of it between match lines, as a polyline along the middle of the bundle.
   * Bends are chords of 7.5°, whose corners lie on the circle of the bend; a smooth bend is longer
   * by 0.07 % of the bend.
   *
   * @param branch the branch's name
   * @param start node at the first point; empty at a match line
   * @param end node at the last point; empty at a match line
   * @param fromMm place on the branch of the first point, from the branch's {@code from} node, mm
   * @param toMm place on the branch of the last point, mm, more than {@code fromMm}
   * @param diameterMm diameter of the bundle, mm
   * @param points two or more; the polyline is {@code toMm - fromMm} long
   */
  public record Line(
      String branch,
      Optional<String> start,
      Optional<String> end,
      double fromMm,
      double toMm,
      double diameterMm,
      List<Point> points) {
    public Line {
      points = List.copyOf(points);
    }

    /** True length of this part, mm. */
    public double lengthMm() {
      return toMm - fromMm;
    }
  }

  /** A junction, with a mark for each branch that breaks out of it. */
  public record Joint(String name, Point at, List<Breakout> breakouts) {
    public Joint {
      breakouts = List.copyOf(breakouts);
    }
  }

  /**
   * Where a branch leaves a junction.
   *
   * @param headingDegrees 0 to the right, 90 down
   */
  public record Breakout(String branch, Point at, int headingDegrees) {}

  /**
   * An end at the tip of its branch.
   *
   * @param at the tip of the branch
   * @param headingDegrees the way the branch points where it ends: 0 to the right, 90 down
   * @param body where the face or symbol is drawn
   * @param table where its table is drawn
   */
  public record LaidEnd(
      String name,
      BoardTree.EndKind kind,
      String branch,
      Point at,
      int headingDegrees,
      Box body,
      Optional<Box> table) {}

  /** Why a peg stands where it stands. */
  public enum PegUse {
    JUNCTION,
    BEND,
    END
  }

  /**
   * A peg beside a bundle.
   *
   * @param holds the junction, branch or end it holds
   */
  public record Peg(Point at, double diameterMm, PegUse use, String holds) {}

  /**
   * A splice.
   *
   * @param atMm place on the branch, from its {@code from} node, mm
   * @param headingDegrees the branch's direction there
   */
  public record Spot(String name, String branch, double atMm, Point at, double headingDegrees) {}

  /**
   * A label or tape.
   *
   * @param covered the part of the bundle that it covers
   */
  public record Band(
      BoardTree.MarkKind kind, String branch, double atMm, String text, List<Point> covered) {
    public Band {
      covered = List.copyOf(covered);
    }
  }

  /**
   * One side of a match line.
   *
   * @param letter the same on both sides
   * @param branch the branch that goes on
   * @param atMm place on the branch, from its {@code from} node, mm
   * @param at where it lies on this sheet
   * @param headingDegrees the way to the other side, for a line that stops here; 0 at a junction
   *     that keeps other branches
   * @param body room of the letter, empty where the cut is at a junction with other branches
   * @param otherSheet the sheet of the other side, from 1
   */
  public record Match(
      String letter,
      String branch,
      double atMm,
      Point at,
      int headingDegrees,
      Optional<Box> body,
      int otherSheet) {}
}
