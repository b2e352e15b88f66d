package org.loomwright.drawing.board;

/**
 * A line of text where it stands.
 *
 * @param name what it is, for styles
 * @param text what it says
 * @param at its middle, halfway up a capital letter
 * @param sizeMm font size, mm
 * @param isUpward whether it is turned to be read from the right
 */
record Text(String name, String text, Point at, double sizeMm, boolean isUpward) {
  /** Capitals with accents reach 0.56 of the size above the middle, descenders 0.6 below. */
  private static final double ABOVE = 0.56;

  private static final double BELOW = 0.6;

  double widthMm() {
    return Ink.widthMm(text, sizeMm);
  }

  Box box() {
    double half = widthMm() / 2;
    return isUpward
        ? new Box(at.xMm() - ABOVE * sizeMm, at.yMm() - half, (ABOVE + BELOW) * sizeMm, 2 * half)
        : new Box(at.xMm() - half, at.yMm() - ABOVE * sizeMm, 2 * half, (ABOVE + BELOW) * sizeMm);
  }

  Text at(Point other) {
    return new Text(name, text, other, sizeMm, isUpward);
  }

  Text sized(double otherMm) {
    return new Text(name, text, at, otherMm, isUpward);
  }
}
