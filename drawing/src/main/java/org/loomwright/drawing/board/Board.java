package org.loomwright.drawing.board;

import java.util.Locale;

/**
 * The board and what is kept on it.
 *
 * @param widthMm outer width, mm, more than 0
 * @param heightMm outer height, mm, more than 0
 * @param marginMm strip along the edges that stays free, mm, 0 or more
 * @param clearanceMm free space between the surfaces of two branches, and between a branch and an
 *     end or two ends, mm, at least 5 so that pegs find room
 * @param bendRatio least radius of a bend, measured at the middle of the bundle, over the bundle's
 *     diameter, at least 1
 */
public record Board(
    double widthMm, double heightMm, double marginMm, double clearanceMm, double bendRatio) {

  /** Four times the diameter for a bundle that does not move; common practice. */
  public static final double USUAL_BEND_RATIO = 4;

  public Board {
    require(widthMm > 0 && widthMm < 1e6, "width", widthMm, "more than 0 mm");
    require(heightMm > 0 && heightMm < 1e6, "height", heightMm, "more than 0 mm");
    require(
        marginMm >= 0 && 2 * marginMm < Math.min(widthMm, heightMm),
        "margin",
        marginMm,
        "0 mm or more and less than half of the shorter side");
    require(clearanceMm >= 5 && clearanceMm < 1e4, "clearance", clearanceMm, "5 mm or more");
    require(bendRatio >= 1 && bendRatio < 1e3, "bend ratio", bendRatio, "1 or more");
  }

  /** A board with a margin of 20 mm, 10 mm between things, and the usual bend radius. */
  public static Board of(double widthMm, double heightMm) {
    return new Board(widthMm, heightMm, 20, 10, USUAL_BEND_RATIO);
  }

  /** The part of the board that may be used. */
  public Box inside() {
    return new Box(0, 0, widthMm, heightMm).grown(-marginMm);
  }

  private static void require(boolean right, String what, double value, String wanted) {
    if (!right) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "board: the %s %s must be %s", what, value, wanted));
    }
  }
}
