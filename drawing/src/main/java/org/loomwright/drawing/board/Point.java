package org.loomwright.drawing.board;

/**
 * A point of the board.
 *
 * @param xMm from the left edge, mm
 * @param yMm from the top edge, mm
 */
public record Point(double xMm, double yMm) {

  /** Straight distance, mm. */
  public double distanceMm(Point other) {
    return Math.hypot(xMm - other.xMm, yMm - other.yMm);
  }

  /** The point moved. */
  public Point plus(double dxMm, double dyMm) {
    return new Point(xMm + dxMm, yMm + dyMm);
  }
}
